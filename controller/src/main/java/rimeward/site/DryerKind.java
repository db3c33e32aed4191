package rimeward.site;

/** The two ways of taking water out of cold air. */
public enum DryerKind {
    /** A rotor that takes water up and is baked out again; works near 0 °C; its fan runs on after switching off. */
    SORPTION,
    /** A cooled coil; must rest between runs; ices and defrosts below its rating. */
    COMPRESSOR
}
