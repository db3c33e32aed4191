package rimeward.site;

/** Whether there is a fan that airs the tunnel. */
public sealed interface Venting {
    record NoVentFan() implements Venting {}

    record VentFan(Machine machine) implements Venting {
        public VentFan {
            Check.that(machine.role() == Role.VENT_FAN, machine.id() + " is not a vent fan");
        }
    }
}
