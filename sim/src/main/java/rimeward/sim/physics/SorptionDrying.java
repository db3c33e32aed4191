package rimeward.sim.physics;

/** A rotor that takes water up and is baked out again. For one thread. */
final class SorptionDrying implements DryingProcess {
    private static final double RATED_C = 10;
    private static final double RATED_PERCENT = 80;
    private static final double S_PER_H = 3600;

    private final Dryer dryer;
    private final DryerParameters.Sorption parameters;
    private final double kgPerSPerPercent;
    private DryerPhase phase = DryerPhase.IDLE;
    private double runOnUntilS;

    SorptionDrying(Dryer dryer, DryerParameters.Sorption parameters) {
        this.dryer = dryer;
        this.parameters = parameters;
        kgPerSPerPercent = parameters.ratedKgPerH() / S_PER_H / (RATED_PERCENT - parameters.residuePercent());
    }

    @Override
    public void settle(double elapsedS) {
        if (dryer.mayRun()) {
            phase = DryerPhase.RUNNING;
        } else if (phase == DryerPhase.RUNNING) {
            phase = DryerPhase.RUN_ON;
            runOnUntilS = elapsedS + parameters.runOnS();
        }
        if (phase == DryerPhase.RUN_ON && elapsedS >= runOnUntilS) {
            phase = DryerPhase.IDLE;
        }
    }

    @Override
    public void lay(State now) {
        switch (phase) {
            case RUNNING -> run(now);
            case RUN_ON -> dryer.blow(dryer.isLive() ? parameters.body().fanW() : 0);
            default -> dryer.still(0);
        }
    }

    @Override
    public void run(State now) {
        dryer.blow(parameters.body().fanW() + parameters.regeneratorW());
        double warmShare = clip((now.dryerC - now.airC) / parameters.warmRiseK());
        double airShare = Math.max(0, 1 + parameters.perK() * (now.airC - RATED_C));
        double residue = parameters.residuePercent() / 100 * now.saturationKgPerKg;
        if (now.humidityKgPerKg > residue) {
            double kgPerS = 100 * kgPerSPerPercent * warmShare * airShare / now.saturationKgPerKg;
            dryer.collect(kgPerS, residue, 0);
        }
    }

    private static double clip(double share) {
        return Math.max(0, Math.min(1, share));
    }

    @Override
    public double untilTimerS(double elapsedS) {
        return phase == DryerPhase.RUN_ON ? runOnUntilS - elapsedS : Double.POSITIVE_INFINITY;
    }

    @Override
    public void offer(Crossings crossings, State now, State next) {}

    @Override
    public DryerPhase phase() {
        return phase;
    }
}
