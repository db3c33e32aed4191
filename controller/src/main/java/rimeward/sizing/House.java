package rimeward.sizing;

import rimeward.air.AirConstants;
import rimeward.air.MoistAir;

/**
 * A tunnel as far as it loses heat.
 *
 * @param areas its surfaces
 * @param coverWPerM2K loss of roof and sides, W/(m² K)
 * @param endsWPerM2K mean loss of both ends, W/(m² K)
 * @param airChangesPerH how often an hour its air is replaced by outside air, 1/h
 * @param edgeWPerMK loss through the ground for each metre of edge, W/(m K)
 * @param airWhPerM3K heat in a cubic metre of its air, Wh/(m³ K)
 */
public record House(
        Areas areas,
        double coverWPerM2K,
        double endsWPerM2K,
        double airChangesPerH,
        double edgeWPerMK,
        double airWhPerM3K) {
    private static final double S_PER_H = 3600;

    /** Heat in a cubic metre of dry air at this temperature and altitude, Wh/(m³ K). */
    public static double airWhPerM3K(double airC, double altitudeM) {
        double kgPerM3 = MoistAir.densityKgPerM3(airC, 0, MoistAir.pressurePa(altitudeM));
        return kgPerM3 * AirConstants.DRY_AIR_HEAT_J_PER_KG_K / S_PER_H;
    }

    public Loss loss() {
        return new Loss(
                areas.roofAndSidesM2() * coverWPerM2K,
                areas.endsM2() * endsWPerM2K,
                areas.volumeM3() * airChangesPerH * airWhPerM3K,
                areas.edgeM() * edgeWPerMK);
    }

    House withCover(double otherWPerM2K) {
        return new House(areas, otherWPerM2K, endsWPerM2K, airChangesPerH, edgeWPerMK, airWhPerM3K);
    }

    House withEnds(double otherWPerM2K) {
        return new House(areas, coverWPerM2K, otherWPerM2K, airChangesPerH, edgeWPerMK, airWhPerM3K);
    }

    House withAirChanges(double otherPerH) {
        return new House(areas, coverWPerM2K, endsWPerM2K, otherPerH, edgeWPerMK, airWhPerM3K);
    }

    House withEdge(double otherWPerMK) {
        return new House(areas, coverWPerM2K, endsWPerM2K, airChangesPerH, otherWPerMK, airWhPerM3K);
    }

    House withAreas(Areas other) {
        return new House(other, coverWPerM2K, endsWPerM2K, airChangesPerH, edgeWPerMK, airWhPerM3K);
    }
}
