/** Planted: the one package here that says what it is for. */
package rimeward.map.planted.site;
