/** The frost-risk alert over many made winters, with forecasts as wrong as real ones. */
package rimeward.outlook;
