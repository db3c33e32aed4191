package rimeward.sizing;

/** Heat lost per kelvin of inside above outside, by the way it takes, W/K. */
public record Loss(double roofAndSidesWPerK, double endsWPerK, double draughtsWPerK, double edgeWPerK) {
    public double totalWPerK() {
        return roofAndSidesWPerK + endsWPerK + draughtsWPerK + edgeWPerK;
    }
}
