package rimeward.adapter.pi;

import com.pi4j.context.Context;
import com.pi4j.io.i2c.I2C;
import com.pi4j.io.i2c.I2CProvider;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A bus by way of Pi4J's linuxfs. For one thread. Opened at the first question, and anew when it has been silent for long, so that a
 * bus may come late, go and come back.
 */
final class Pi4jBus implements I2cBus {
    private static final int FAILURES_TO_REOPEN =
            12; // half a minute: a chip that does not answer is no reason, a bus that was replugged is

    private final int bus;
    private final Map<Integer, I2C> devices = new HashMap<>();
    private @Nullable Context context;
    private int failures;

    Pi4jBus(int bus) {
        this.bus = bus;
    }

    @Override
    public byte[] ask(int address, byte[] command, int waitMs, int answerLength) throws IOException {
        try {
            I2C device = device(address);
            device.write(command, 0, command.length);
            Thread.sleep(waitMs);
            byte[] answer = new byte[answerLength];
            int got = device.read(answer, 0, answerLength);
            if (got != answerLength) {
                throw new IOException("I2C bus " + bus + " gave " + got + " bytes of " + answerLength);
            }
            failures = 0;
            return answer;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        } catch (RuntimeException | LinkageError e) { // Pi4J's own, and a native part that is not there
            failed();
            throw new IOException("I2C bus " + bus + " did not answer at address " + address, e);
        }
    }

    private I2C device(int address) {
        Context open = context == null ? Pi4j.forI2c() : context;
        context = open;
        return devices.computeIfAbsent(address, at -> {
            I2CProvider provider = open.provider("linuxfs-i2c");
            return provider.create(I2C.newConfigBuilder(open)
                    .id("i2c-" + bus + "-" + at)
                    .bus(bus)
                    .device(at)
                    .build());
        });
    }

    private void failed() {
        failures++;
        if (failures % FAILURES_TO_REOPEN == 0) {
            close();
        }
    }

    @Override
    public void close() {
        devices.clear();
        if (context != null) {
            context.shutdown();
            context = null;
        }
    }
}
