package rimeward.sim.physics;

/** A cooled coil that ices when the air is cold, and must rest between runs. For one thread. */
final class CompressorDrying implements DryingProcess {
    private static final double S_PER_DAY = 86_400;
    private static final double J_PER_KWH = 3.6e6;

    /** From the first ice on the coil to all of the water freezing there, K of air temperature (common practice, no source). */
    private static final double ICING_SPAN_K = 8;

    /** Share of the collection that is lost when the coil carries its limit of ice (common practice, no source). */
    private static final double ICE_BLOCKS_SHARE = 0.5;

    /** Ice left on a stopped coil melts by itself with this time constant when the air is above 0 °C (common practice, no source). */
    private static final double MELTS_IN_S = 3600;

    /** Ice that a defrost leaves, as a share of the limit. */
    private static final double LEFT_SHARE = 0.02;

    private static final double LEAST_EFFICIENCY_SHARE = 0.2;

    private final Dryer dryer;
    private final DryerParameters.Compressor parameters;
    private final Hysteresis iced;
    private DryerPhase phase = DryerPhase.IDLE;
    private double restUntilS;

    CompressorDrying(Dryer dryer, DryerParameters.Compressor parameters) {
        this.dryer = dryer;
        this.parameters = parameters;
        iced = new Hysteresis(LEFT_SHARE * parameters.iceLimitKg(), parameters.iceLimitKg(), 0);
    }

    @Override
    public void settle(double elapsedS) {
        if (phase == DryerPhase.REST && elapsedS >= restUntilS) {
            phase = DryerPhase.IDLE;
        }
        boolean mayRun = dryer.mayRun();
        boolean mustRest = phase == DryerPhase.DEFROST && !iced.isHigh();
        if (mustRest || (!mayRun && (phase == DryerPhase.RUNNING || phase == DryerPhase.DEFROST))) {
            phase = DryerPhase.REST;
            restUntilS = elapsedS + parameters.restS();
        } else if (mayRun && phase != DryerPhase.REST) {
            phase = iced.isHigh() ? DryerPhase.DEFROST : DryerPhase.RUNNING;
        }
    }

    @Override
    public void lay(State now) {
        switch (phase) {
            case RUNNING -> run(now);
            case DEFROST -> {
                dryer.blow(parameters.defrostW());
                dryer.melt(parameters.iceLimitKg() / parameters.defrostS());
            }
            default -> {
                dryer.still(0);
                dryer.melt(now.airC > 0 ? now.coilIceKg / MELTS_IN_S : 0);
            }
        }
    }

    @Override
    public void run(State now) {
        double rhPercent = now.rhPercent();
        double cleanKgPerS = parameters.ratedKgPerDay() / S_PER_DAY * WinklerCurves.waterShare(now.airC, rhPercent);
        double kgPerKWh = parameters.ratedKgPerKWh()
                * Math.max(LEAST_EFFICIENCY_SHARE, WinklerCurves.efficiencyShare(now.airC, rhPercent));
        dryer.blow(Math.max(parameters.body().fanW(), cleanKgPerS / kgPerKWh * J_PER_KWH));
        double openShare = 1 - ICE_BLOCKS_SHARE * Math.min(1, now.coilIceKg / parameters.iceLimitKg());
        double freezeShare = Math.max(0, Math.min(1, (parameters.icesBelowC() - now.airC) / ICING_SPAN_K));
        dryer.collect(cleanKgPerS * openShare / now.humidityKgPerKg, 0, freezeShare);
    }

    @Override
    public double untilTimerS(double elapsedS) {
        return phase == DryerPhase.REST ? restUntilS - elapsedS : Double.POSITIVE_INFINITY;
    }

    @Override
    public void offer(Crossings crossings, State now, State next) {
        crossings.offer(iced, now.coilIceKg, next.coilIceKg);
    }

    @Override
    public DryerPhase phase() {
        return phase;
    }
}
