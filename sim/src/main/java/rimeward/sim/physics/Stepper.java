package rimeward.sim.physics;

/** Moves the state of a tunnel through time and books what that took. For one thread; allocates nothing. */
final class Stepper {
    /** Longest step, s: with it 5 s and 1 s agree within 0.02 K, thermostats included. */
    private static final double LONGEST_S = 5;

    /** Shorter remains of a step are not worth a step of their own, s. */
    private static final double TINY_S = 1e-6;

    private final State now;
    private final State next = new State();
    private final State before = new State();
    private final State middle = new State();
    private final Crossings crossings = new Crossings();
    private final Outside outside;
    private final Balance balance;
    private final Lumps lumps;
    private final Heater heater;
    private final Dryer dryer;
    private final Openings openings;
    private final HeatLedger heat;
    private final WaterLedger water;
    private final Pourings pourings;
    private double elapsedS;
    private double lastS = 1;

    /** What flowed in the last step. */
    final Flows flows = new Flows();

    Stepper(
            State now,
            Outside outside,
            Balance balance,
            Lumps lumps,
            Heater heater,
            Dryer dryer,
            Openings openings,
            HeatLedger heat,
            WaterLedger water,
            Pourings pourings) {
        this.now = now;
        this.outside = outside;
        this.balance = balance;
        this.lumps = lumps;
        this.heater = heater;
        this.dryer = dryer;
        this.openings = openings;
        this.heat = heat;
        this.water = water;
        this.pourings = pourings;
        before.copyFrom(now);
    }

    double elapsedS() {
        return elapsedS;
    }

    /** Goes on from where the state was put, without a step before it. */
    void resume() {
        before.copyFrom(now);
        lastS = 1;
    }

    void advance(double stepS) {
        if (elapsedS == 0) {
            primeFilm();
        }
        double leftS = stepS;
        while (leftS > TINY_S) {
            heater.settle();
            dryer.settle(elapsedS);
            double tryS = Math.min(Math.min(leftS, LONGEST_S), Math.max(TINY_S, dryer.untilTimerS(elapsedS)));
            middle.guessMiddle(before, now, tryS < lastS ? tryS / lastS / 2 : 0.5);
            dryer.lay(middle);
            balance.freeze(middle, outside, openings);
            double takenS = stepUpTo(leftS - tryS < TINY_S ? leftS : tryS);
            elapsedS += takenS;
            leftS -= takenS;
        }
    }

    /** Lets the film have the temperature that the first state and weather give it. */
    private void primeFilm() {
        heater.settle();
        dryer.settle(elapsedS);
        dryer.lay(now);
        balance.freeze(now, outside, openings);
        solve(TINY_S);
        now.filmC = next.filmC;
        now.filmOutsideC = next.filmOutsideC;
    }

    /** Steps until the first contact turns, at most {@code stepS}; returns how far it came. */
    private double stepUpTo(double stepS) {
        double triedS = tryStep(stepS);
        crossings.clear();
        offer();
        return crossings.isAny() ? stepToTurn(triedS) : commit(triedS);
    }

    /** Cuts a step that was tried where the first contact turns, and turns it. */
    private double stepToTurn(double triedS) {
        if (triedS * crossings.share() < TINY_S) {
            crossings.flip();
            return 0;
        }
        tryStep(triedS * crossings.share());
        crossings.refine();
        offer();
        double cutS = triedS * crossings.refinedShare();
        double doneS = commit(tryStep(cutS));
        if (doneS >= cutS) { // or else it was cut again before the turn, for want of water
            crossings.flip();
        }
        return doneS;
    }

    private void offer() {
        heater.offer(crossings, now, next);
        dryer.offer(crossings, now, next);
    }

    /** Fills {@link #next}, again and shorter if water was taken where there was none; returns the length that could be done. */
    private double tryStep(double stepS) {
        double tryS = stepS;
        solve(tryS);
        if (next.isOverdrawn()) {
            balance.guardFilm(middle);
            solve(tryS);
        }
        while (next.isOverdrawn()) {
            tryS /= 2;
            solve(tryS);
        }
        lumps.follow(now, next, balance, tryS);
        return tryS;
    }

    private void solve(double stepS) {
        balance.solve(now, outside, heater, dryer, stepS);
        balance.read(flows, outside, heater, dryer);
        lumps.carry(now, flows, next, stepS);
        next.saturationKgPerKg = WetSurface.saturatedKgPerKg(next.airC, outside.pressurePa);
        next.filmC = balance.filmC();
        next.filmOutsideC = balance.filmOutsideC();
    }

    private double commit(double stepS) {
        heat.book(flows, stepS);
        water.book(flows, stepS);
        heater.book(stepS);
        dryer.book(stepS);
        openings.book(stepS);
        before.copyFrom(now);
        now.copyFrom(next);
        lastS = stepS;
        pourings.settle();
        return stepS;
    }
}
