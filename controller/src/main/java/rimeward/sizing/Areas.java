package rimeward.sizing;

/**
 * Surfaces of a tunnel and the air in it.
 *
 * @param roofAndSidesM2 cover without the ends, m²
 * @param endsM2 both ends together, doors included, m²
 * @param floorM2 ground covered, m²
 * @param edgeM where cover and ground meet, all around, m
 * @param volumeM3 air enclosed, m³
 */
public record Areas(double roofAndSidesM2, double endsM2, double floorM2, double edgeM, double volumeM3) {}
