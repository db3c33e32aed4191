package rimeward.sim.physics;

/**
 * What covers a tunnel, per square metre.
 *
 * <p>Losses of double film and twin-wall sheet are those of a structure maker's worked example (0.7 and 0.53 Btu/(h ft² °F)); the
 * others, the long-wave and solar shares and the water a cover holds are common practice, no source.
 */
public enum CoverKind {
    SINGLE_FILM(6.8, 0.60, 0.15, 0.87),
    DOUBLE_FILM(0.7 * CoverKind.BTU_PER_H_FT2_F, 0.40, 0.10, 0.77),
    BUBBLE_LINED_FILM(3.6, 0.30, 0.10, 0.70),
    TWIN_WALL(0.53 * CoverKind.BTU_PER_H_FT2_F, 0.03, 0.02, 0.75),
    GLASS(6.2, 0.01, 0.01, 0.83);

    /** One Btu/(h ft² °F) in W/(m² K), from the international table Btu and the international foot. */
    private static final double BTU_PER_H_FT2_F = 5.678263341;

    /** Standard surface resistances for heat flowing upwards, m² K/W; EN ISO 6946 table 7: 0.10 inside, 0.04 outside. */
    private static final double SURFACES_M2K_PER_W = 0.14;

    private final double lossWPerM2K;
    private final double dryLongWaveShare;
    private final double wetLongWaveShare;
    private final double sunShare;

    CoverKind(double lossWPerM2K, double dryLongWaveShare, double wetLongWaveShare, double sunShare) {
        this.lossWPerM2K = lossWPerM2K;
        this.dryLongWaveShare = dryLongWaveShare;
        this.wetLongWaveShare = wetLongWaveShare;
        this.sunShare = sunShare;
    }

    /** Loss from inside air to outside air with standard surfaces, W/(m² K). */
    public double lossWPerM2K() {
        return lossWPerM2K;
    }

    /** Resistance of the cover itself, between its two surfaces, m² K/W. */
    public double resistanceM2KPerW() {
        return 1 / lossWPerM2K - SURFACES_M2K_PER_W;
    }

    /** Share of long-wave radiation that passes the dry cover, 0…1. */
    public double dryLongWaveShare() {
        return dryLongWaveShare;
    }

    /** The same with drops or frost on it. */
    public double wetLongWaveShare() {
        return wetLongWaveShare;
    }

    /** Share of sunshine that passes, 0…1. */
    public double sunShare() {
        return sunShare;
    }
}
