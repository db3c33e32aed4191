/** Small classes, most with one fault each, on which the rules of the map are tried. Nothing else may import them. */
package rimeward.map.planted;
