package rimeward.sim.physics;

/** No dryer. */
final class NoDrying implements DryingProcess {
    private final Dryer dryer;

    NoDrying(Dryer dryer) {
        this.dryer = dryer;
    }

    @Override
    public void settle(double elapsedS) {}

    @Override
    public void lay(State now) {
        dryer.still(0);
    }

    @Override
    public void run(State now) {
        lay(now);
    }

    @Override
    public double untilTimerS(double elapsedS) {
        return Double.POSITIVE_INFINITY;
    }

    @Override
    public void offer(Crossings crossings, State now, State next) {}

    @Override
    public DryerPhase phase() {
        return DryerPhase.IDLE;
    }
}
