package rimeward.broker;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import rimeward.alert.Alert;
import rimeward.assembly.Audience;
import rimeward.assembly.Service;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.order.Answer;
import rimeward.sim.run.LiveTunnel;
import rimeward.sim.scenario.Scenario;
import rimeward.site.Site;

/** Whole services in this process, each with a simulated tunnel whose time goes at one pace; counts what they all decide and tell. */
public final class PacedService implements Audience {
    private final double speed;
    private final AtomicLong decisions = new AtomicLong();
    private final AtomicInteger alerts = new AtomicInteger();
    private volatile boolean over;

    /** @param speed simulated seconds in a real one */
    public PacedService(double speed) {
        this.speed = speed;
    }

    /** One service from start to start again, until its tunnel's time is over or {@link #end} is called. Blocks. */
    public void run(Scenario scenario, Site site, Path data) {
        long beganNs = System.nanoTime();
        LiveTunnel tunnel = new LiveTunnel(scenario, simulatedS -> reach(beganNs, simulatedS));
        while (!tunnel.isOver()) {
            new Service(site, new DutyLaw(), data, tunnel, this, System::nanoTime).run();
        }
    }

    private boolean reach(long beganNs, double simulatedS) {
        long dueNs = beganNs + (long) (simulatedS / speed * 1e9);
        for (long leftNs = dueNs - System.nanoTime(); leftNs > 0; leftNs = dueNs - System.nanoTime()) {
            LockSupport.parkNanos(leftNs);
        }
        return !over;
    }

    public long decisions() {
        return decisions.get();
    }

    public int alerts() {
        return alerts.get();
    }

    public void end() {
        over = true;
    }

    @Override
    public void says(String line) {}

    @Override
    public void decided(Stepped stepped) {
        decisions.incrementAndGet();
    }

    @Override
    public void answered(Answer answer) {}

    @Override
    public void told(Alert alert) {
        alerts.incrementAndGet();
    }
}
