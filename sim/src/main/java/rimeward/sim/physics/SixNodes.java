package rimeward.sim.physics;

/**
 * The tunnel's balance in its own six rows: what {@link Network} does for any network, with everything that is always zero left out,
 * because every tick of every winter passes here. {@code SixNodesTest} holds the two together. For one thread.
 *
 * <p>The heater's element and the dryer's inside are joined to the air alone, so they are folded into its row first; film, vapour, mass
 * and air remain, and are eliminated in that order. A row's field {@code xOfY} is what one unit of Y takes out of X each second.
 */
final class SixNodes {
    private static final double GAMMA = (3 + Math.sqrt(3)) / 6;
    private static final double SECOND_START = (1 - 2 * GAMMA) / GAMMA;
    private static final double PER_TWO_GAMMA = 1 / (2 * GAMMA);

    // What each stores: J/K, and kg for the vapour. The film stores nothing.
    private final double elementJPerK;
    private final double dryerJPerK;
    private final double vapourKg;
    private final double massJPerK;
    private final double airJPerK;

    // Laid before each step: flows that are known, then what each takes from another.
    double intoElement;
    double intoDryer;
    double intoFilm;
    double intoVapour;
    double intoMass;
    double intoAir;
    double elementToAir;
    double dryerToAir;
    double dryerOfVapour;
    double filmOfFilm;
    double filmOfVapour;
    double filmOfMass;
    double filmOfAir;
    double vapourOfFilm;
    double vapourOfVapour;
    double vapourOfMass;
    double massOfFilm;
    double massOfVapour;
    double massOfMass;
    double massOfAir;
    double airOfFilm;
    double airOfMass;
    double airOfAir;

    // Values at which the flows of the step, times its length, are what was moved.
    double elementC;
    double dryerC;
    double filmC;
    double humidityKgPerKg;
    double massC;
    double airC;

    private double stepS;
    private double firstAirC;
    private double secondAirC;

    SixNodes(double elementJPerK, double dryerJPerK, double vapourKg, double massJPerK, double airJPerK) {
        this.elementJPerK = elementJPerK;
        this.dryerJPerK = dryerJPerK;
        this.vapourKg = vapourKg;
        this.massJPerK = massJPerK;
        this.airJPerK = airJPerK;
    }

    /** Both stages of a step from here; written in one piece so that every number stays in a register. */
    void step(State now, double lengthS) {
        stepS = lengthS;
        double perS = 1 / (GAMMA * lengthS);
        double elementKeeps = elementJPerK * perS;
        double dryerKeeps = dryerJPerK * perS;
        double vapourKeeps = vapourKg * perS;
        double massKeeps = massJPerK * perS;
        double airKeeps = airJPerK * perS;

        // The leaves: each is (known + gives · air) / all.
        double perElement = 1 / (elementKeeps + elementToAir);
        double perDryer = 1 / (dryerKeeps + dryerToAir);
        double elementShare = elementToAir * perElement;
        double dryerShare = dryerToAir * perDryer;

        // Triangles: the factor by which a row above is taken off, and what remains.
        double perFilm = 1 / filmOfFilm;
        double vapourByFilm = vapourOfFilm * perFilm;
        double massByFilm = massOfFilm * perFilm;
        double airByFilm = airOfFilm * perFilm;
        double perVapour = 1 / (vapourOfVapour + vapourKeeps - vapourByFilm * filmOfVapour);
        double vapourMass = vapourOfMass - vapourByFilm * filmOfMass;
        double vapourAir = -vapourByFilm * filmOfAir;
        double massByVapour = (massOfVapour - massByFilm * filmOfVapour) * perVapour;
        double airByVapour = (dryerShare * dryerOfVapour - airByFilm * filmOfVapour) * perVapour;
        double perMass = 1 / (massOfMass + massKeeps - massByFilm * filmOfMass - massByVapour * vapourMass);
        double massAir = massOfAir - massByFilm * filmOfAir - massByVapour * vapourAir;
        double airByMass = (airOfMass - airByFilm * filmOfMass - airByVapour * vapourMass) * perMass;
        double airAir = airOfAir + airKeeps + elementShare * elementKeeps + dryerShare * dryerKeeps;
        double perAir = 1 / (airAir - airByFilm * filmOfAir - airByVapour * vapourAir - airByMass * massAir);
        double airKnown = intoAir + elementShare * intoElement + dryerShare * intoDryer;

        // First stage.
        double h = now.humidityKgPerKg;
        double m = now.massC;
        double a = now.airC;
        double e = now.elementC;
        double d = now.dryerC;
        double vapourRight = intoVapour + vapourKeeps * h - vapourByFilm * intoFilm;
        double massRight = intoMass + massKeeps * m - massByFilm * intoFilm - massByVapour * vapourRight;
        double airRight = airKnown + airKeeps * a + elementShare * elementKeeps * e + dryerShare * dryerKeeps * d;
        double a1 = (airRight - airByFilm * intoFilm - airByVapour * vapourRight - airByMass * massRight) * perAir;
        double m1 = (massRight - massAir * a1) * perMass;
        double h1 = (vapourRight - vapourAir * a1 - vapourMass * m1) * perVapour;
        double f1 = (intoFilm - filmOfAir * a1 - filmOfMass * m1 - filmOfVapour * h1) * perFilm;
        double e1 = (intoElement + elementKeeps * e + elementToAir * a1) * perElement;
        double d1 = (intoDryer + dryerKeeps * d + dryerToAir * a1 - dryerOfVapour * h1) * perDryer;

        // Second stage, from where the first one points to.
        h += SECOND_START * (h1 - h);
        m += SECOND_START * (m1 - m);
        a += SECOND_START * (a1 - a);
        e += SECOND_START * (e1 - e);
        d += SECOND_START * (d1 - d);
        vapourRight = intoVapour + vapourKeeps * h - vapourByFilm * intoFilm;
        massRight = intoMass + massKeeps * m - massByFilm * intoFilm - massByVapour * vapourRight;
        airRight = airKnown + airKeeps * a + elementShare * elementKeeps * e + dryerShare * dryerKeeps * d;
        double a2 = (airRight - airByFilm * intoFilm - airByVapour * vapourRight - airByMass * massRight) * perAir;
        double m2 = (massRight - massAir * a2) * perMass;
        double h2 = (vapourRight - vapourAir * a2 - vapourMass * m2) * perVapour;
        double f2 = (intoFilm - filmOfAir * a2 - filmOfMass * m2 - filmOfVapour * h2) * perFilm;
        double e2 = (intoElement + elementKeeps * e + elementToAir * a2) * perElement;
        double d2 = (intoDryer + dryerKeeps * d + dryerToAir * a2 - dryerOfVapour * h2) * perDryer;

        elementC = 0.5 * (e1 + e2);
        dryerC = 0.5 * (d1 + d2);
        filmC = 0.5 * (f1 + f2);
        humidityKgPerKg = 0.5 * (h1 + h2);
        massC = 0.5 * (m1 + m2);
        airC = 0.5 * (a1 + a2);
        firstAirC = a1;
        secondAirC = a2;
    }

    /** Where something that follows the air with a time constant, and does not act on it, ends the step, °C. */
    double followsAirC(double now, double timeConstantS) {
        double x = GAMMA * stepS / timeConstantS;
        double damping = 1 / (1 + x);
        double one = (now + x * firstAirC) * damping;
        double secondStart = now + SECOND_START * (one - now);
        double two = (secondStart + x * secondAirC) * damping;
        return now + (one - now + two - secondStart) * PER_TWO_GAMMA;
    }
}
