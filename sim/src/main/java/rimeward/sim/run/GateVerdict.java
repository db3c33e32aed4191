package rimeward.sim.run;

/**
 * Whether one law passed one gate.
 *
 * @param law its name
 * @param gate the gate's key in the gates file: "most_gap_s"
 * @param measured what the run reached, in the unit of the gate's name
 * @param limit what it had to reach
 */
public record GateVerdict(String law, String gate, double measured, double limit, boolean passed) {}
