package rimeward.adapter.pi;

import com.pi4j.boardinfo.util.BoardInfoHelper;
import com.pi4j.context.Context;
import com.pi4j.io.gpio.digital.DigitalOutput;
import com.pi4j.io.gpio.digital.DigitalOutputProvider;
import com.pi4j.io.gpio.digital.DigitalState;
import com.pi4j.library.gpiod.internal.GpioDContext;
import java.nio.file.Path;
import java.util.function.IntSupplier;
import rimeward.site.Wiring;

/** Lines by way of Pi4J. */
final class Pi4jLines implements LineTaker {
    private final Path root;
    private final Context context;
    private final DigitalOutputProvider provider;
    private final boolean readsBack;

    private Pi4jLines(Path root, Context context, String providerId, boolean readsBack) {
        this.root = root;
        this.context = context;
        this.readsBack = readsBack;
        provider = context.provider(providerId);
    }

    /** The real ones. */
    static Pi4jLines gpiod(Path root) {
        if (!BoardInfoHelper
                .runningOnRaspberryPi()) { // its gpiod plug-in would look at no chip, and say so for each line
            throw new LinesRefused(
                    "no relay line can be reached: this is no Raspberry Pi, or a newer one than Pi4J 2.8.0 knows"
                            + " (it goes by /proc/cpuinfo and /proc/device-tree/model)");
        }
        try {
            // By itself first: a context would only log why this fails, and then lack its provider.
            GpioDContext.getInstance().initialize();
            return new Pi4jLines(root, Pi4j.forOutputs(), "gpiod-digital-output", true);
        } catch (RuntimeException | LinkageError e) {
            throw new LinesRefused(
                    "the GPIO lines cannot be reached: " + e.getMessage()
                            + "; run this on a Raspberry Pi, as root or in the group gpio",
                    e);
        }
    }

    /** Lines of a context that was made elsewhere, by the provider of this name and no other. */
    static Pi4jLines with(Context context, String providerId, Path root) {
        return new Pi4jLines(root, context, providerId, false);
    }

    @Override
    public RelayLine take(String machine, Wiring.GpioLine at, boolean high) {
        GpioChips.below(root).check("relay of " + machine, at.chip());
        try {
            DigitalState level = high ? DigitalState.HIGH : DigitalState.LOW;
            DigitalOutput output = provider.create(DigitalOutput.newConfigBuilder(context)
                    .id(machine)
                    .address(at.line())
                    .initial(level)
                    .build());
            return readsBack
                    ? new Line(
                            output,
                            () -> GpioDContext.getInstance()
                                    .getOrOpenLine(at.line())
                                    .getValue())
                    : new Line(output, () -> output.isHigh() ? 1 : 0);
        } catch (RuntimeException | LinkageError e) {
            throw new LinesRefused(
                    "line " + at.line() + " of " + at.chip() + " (relay of " + machine + ") cannot be taken: "
                            + e.getMessage()
                            + "; another program may hold it (the service? systemctl stop rimeward), the rights may be missing"
                            + " (group gpio), or this is no Raspberry Pi",
                    e);
        }
    }

    /**
     * Pi4J 2.8.0 writes no level here, because no {@code shutdownState} is configured (DigitalOutputBase.shutdown), and releases every
     * line (GpioDContext.close); it does so only when asked, its own shutdown hook being off (DefaultContextBuilder). What a released pin
     * does then is the kernel's affair. Raspberry Pi OS keeps its level (its documentation, "GPIO and the 40-pin header"); the mainline
     * kernel, and Raspberry Pi OS with {@code dtparam=strict_gpiod}, make it an input (pinctrl-bcm2835, {@code persist_gpio_outputs}),
     * and the pull on the relay board decides: it must ask for the same as the stop level. A killed process lets go in the same way, its
     * last level instead of the stop level: so {@code ExecStopPost=}.
     */
    @Override
    public void close() {
        context.shutdown();
    }

    private record Line(DigitalOutput output, IntSupplier value) implements RelayLine {
        @Override
        public void drive(boolean high) {
            try {
                output.state(high ? DigitalState.HIGH : DigitalState.LOW);
            } catch (RuntimeException e) {
                throw new LineFailed("line " + output.address() + " would not go " + (high ? "high" : "low"), e);
            }
        }

        @Override
        public boolean isHigh() {
            try {
                return value.getAsInt() != 0;
            } catch (RuntimeException e) {
                throw new LineFailed("line " + output.address() + " cannot be read back", e);
            }
        }
    }
}
