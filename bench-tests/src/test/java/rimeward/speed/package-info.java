/** Benchmarks: they measure and assert nothing. Compiled by every build, run by none but {@code mvn -q -Pspeed package}. */
package rimeward.speed;
