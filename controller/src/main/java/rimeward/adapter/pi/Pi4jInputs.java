package rimeward.adapter.pi;

import com.pi4j.boardinfo.util.BoardInfoHelper;
import com.pi4j.library.gpiod.internal.GpioDContext;
import com.pi4j.library.gpiod.internal.GpioLine;
import com.pi4j.library.gpiod.internal.GpioLineEvent;
import com.pi4j.library.gpiod.internal.LineRequestFlag;
import java.nio.file.Path;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import rimeward.site.InputLine;

/**
 * Lines that are read, by way of the library below Pi4J's gpiod provider, each with a handle on the chip of its own: the provider lets
 * go of all its lines at once, which would pull the chip from under a thread that waits for an edge. Its own inputs are not used: each
 * wakes a hundred times a second.
 */
record Pi4jInputs(Path root) implements InputTaker {
    @Override
    public TakenLine take(String what, InputLine at, boolean edges) {
        GpioChips.below(root).check(what, at.chip());
        if (!BoardInfoHelper.runningOnRaspberryPi()) {
            throw refused(what, at, "this is no Raspberry Pi", null);
        }
        GpioDContext chip = new GpioDContext();
        try {
            chip.initialize();
            GpioLine line = chip.getOrOpenLine(at.line());
            if (line.isUsed()) {
                throw refused(what, at, "it is held by \"" + line.getConsumer() + "\"", null);
            }
            request(line, at, edges);
            return new Taken(chip, line, at, edges ? chip.openLineEvent() : null);
        } catch (LinesRefused e) {
            chip.close();
            throw e;
        } catch (RuntimeException | LinkageError e) {
            chip.close();
            throw refused(what, at, String.valueOf(e.getMessage()), e);
        }
    }

    private static LinesRefused refused(String what, InputLine at, String why, @Nullable Throwable cause) {
        String message = "line " + at.line() + " of " + at.chip() + " (" + what + ") cannot be taken: " + why
                + "; another program or a device-tree overlay may hold it (gpioinfo tells which), the rights may be missing"
                + " (group gpio), or this is no Raspberry Pi";
        return cause == null ? new LinesRefused(message) : new LinesRefused(message, cause);
    }

    private static void request(GpioLine line, InputLine at, boolean edges) {
        int pull = switch (at.pull()) {
            case UP -> LineRequestFlag.BIAS_PULL_UP.getVal();
            case DOWN -> LineRequestFlag.BIAS_PULL_DOWN.getVal();
            case NONE -> LineRequestFlag.BIAS_DISABLE.getVal();
        };
        if (!edges) {
            line.requestInputFlags("rimeward", pull);
        } else if (at.activeLow()) {
            line.requestFallingEdgeEventsFlags("rimeward", pull);
        } else {
            line.requestRisingEdgeEventsFlags("rimeward", pull);
        }
    }

    private record Taken(
            GpioDContext chip,
            GpioLine line,
            InputLine at,
            @Nullable GpioLineEvent event) implements TakenLine {
        @Override
        public boolean isHigh() {
            try {
                return line.getValue() != 0;
            } catch (RuntimeException e) {
                throw failed(e);
            }
        }

        @Override
        public OptionalLong nextEdgeNs(long waitMs) {
            try {
                if (event == null || !line.eventWait(waitMs * 1_000_000)) {
                    return OptionalLong.empty();
                }
                return OptionalLong.of(line.eventRead(event).getTimeNs());
            } catch (RuntimeException e) {
                throw failed(e);
            }
        }

        private RelayLine.LineFailed failed(RuntimeException e) {
            return new RelayLine.LineFailed("line " + at.line() + " of " + at.chip() + " cannot be read", e);
        }

        @Override
        public void close() {
            chip.close();
        }
    }
}
