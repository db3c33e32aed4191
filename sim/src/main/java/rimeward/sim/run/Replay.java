package rimeward.sim.run;

import java.util.List;
import java.util.function.BiConsumer;
import rimeward.alert.AlertBoard;
import rimeward.core.ControlCycle;
import rimeward.core.ControlStep;
import rimeward.core.Outcome;
import rimeward.core.order.Standing;
import rimeward.port.ForecastSource;
import rimeward.port.Health;
import rimeward.port.Journal;
import rimeward.port.Orders;
import rimeward.port.Relays;
import rimeward.port.Sensors;
import rimeward.service.ControlLoop;
import rimeward.service.Grower;
import rimeward.service.StateKeeper;
import rimeward.sim.device.SimRelays;
import rimeward.sim.device.SimSensors;
import rimeward.sim.scenario.Gates;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.world.Truth;
import rimeward.sim.world.World;
import rimeward.sim.world.WorldPlan;
import rimeward.site.Site;

/**
 * Replays a scenario: the control loop of the service, its doors led into a simulated tunnel. The same scenario and law give the same
 * result, to the last bit. Each run is for one thread; several may run at once.
 */
public final class Replay {
    private Replay() {}

    /** All runs of one scenario beside each other, the own law's first, held against these gates. */
    public static Comparison comparison(Scenario scenario, List<RunResult> results, Gates gates) {
        ScenarioHeader header = header(scenario);
        return new Comparison(header, scenario.site(), results, new GateKeeper(header, results).verdicts(gates));
    }

    /** Under one law. */
    public static RunResult run(Scenario scenario, LawChoice choice) {
        return run(scenario, choice, (outcome, truth) -> {});
    }

    /**
     * Under one law, while somebody looks on.
     *
     * @param onlooker hears every outcome, and how things truly are as it is made
     */
    public static RunResult run(Scenario scenario, LawChoice choice, BiConsumer<Outcome, Truth> onlooker) {
        World world = new World(plan(scenario, choice.label().guarded()));
        boolean obeys = choice.label().guarded(); // whoever does without Rimeward unplugs things by himself
        return run(
                scenario,
                choice,
                world,
                obeys ? new ScenarioOrders(world, scenario.orders()) : Orders.none(),
                onlooker);
    }

    /**
     * Under one law and a grower who asks for other things than the scenario's.
     *
     * @param orders fetched once a tick
     */
    public static RunResult run(Scenario scenario, LawChoice choice, Orders orders) {
        return run(
                scenario, choice, new World(plan(scenario, choice.label().guarded())), orders, (outcome, truth) -> {});
    }

    /**
     * Under a law with the guard, with a record beside it.
     *
     * @param beside hears each tick and what is told, as the service's own record would
     */
    public static RunResult recorded(Scenario scenario, LawChoice choice, Journal beside) {
        World world = new World(plan(scenario, true));
        Orders orders = new ScenarioOrders(world, scenario.orders());
        return run(scenario, choice, world, orders, beside, (outcome, truth) -> {});
    }

    private static RunResult run(
            Scenario scenario, LawChoice choice, World world, Orders orders, BiConsumer<Outcome, Truth> onlooker) {
        return run(scenario, choice, world, orders, (stepped, told) -> {}, onlooker);
    }

    private static RunResult run(
            Scenario scenario,
            LawChoice choice,
            World world,
            Orders orders,
            Journal beside,
            BiConsumer<Outcome, Truth> onlooker) {
        Site site = scenario.site();
        Relays relays = new SimRelays(world, scenario.seed());
        Sensors sensors = new SimSensors(world, site, scenario.sensors(), scenario.doorContact(), scenario.seed());
        FailState failState = new FailState(site, relays, choice.label().guarded());
        Recorder recorder = new Recorder(scenario, choice.label(), world, failState, onlooker);
        VirtualTicker ticker =
                new VirtualTicker(world, recorder, scenario.startEpochS(), scenario.lengthS(), scenario.tickS());
        ForecastSource forecasts =
                new NightForecasts(scenario.weather(), scenario.forecast(), scenario.offset(), world.faults());
        while (!ticker.isOver()) { // once, and again after every restart of the controller
            new ControlLoop(
                            site,
                            step(site, choice),
                            new AlertBoard(site),
                            ticker,
                            sensors,
                            forecasts,
                            relays,
                            (stepped, told) -> {
                                recorder.record(stepped, told);
                                beside.record(stepped, told);
                            },
                            StateKeeper.forgetful(),
                            recorder,
                            new Grower(orders, answer -> {}, Standing.NONE),
                            Health.sound())
                    .run();
        }
        return recorder.result();
    }

    private static ControlStep step(Site site, LawChoice choice) {
        return choice.label().guarded() ? new ControlCycle(site, choice.law()) : new BareStep(site, choice.law());
    }

    /** The world of a scenario. */
    public static WorldPlan plan(Scenario scenario, boolean guarded) {
        return new WorldPlan(
                scenario.tunnel(),
                guarded ? scenario.machines() : scenario.machinesByHand(),
                scenario.site().machineIds(),
                scenario.start(),
                scenario.weather(),
                scenario.startEpochS(),
                scenario.faults(),
                scenario.rounds());
    }

    private static ScenarioHeader header(Scenario scenario) {
        return new ScenarioHeader(
                scenario.id(),
                scenario.title(),
                scenario.description(),
                scenario.weather().provenance(),
                scenario.startEpochS(),
                scenario.lengthS(),
                scenario.tickS(),
                scenario.seed(),
                scenario.offset(),
                FaultWords.notes(scenario));
    }
}
