/** The test that owns the map: which package may import which, and what no package may do. Imports ArchUnit and nothing of ours. */
package rimeward.map;
