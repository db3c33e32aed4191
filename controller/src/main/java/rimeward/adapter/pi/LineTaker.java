package rimeward.adapter.pi;

import rimeward.site.Wiring;

/** Takes lines, and lets go of all of them. */
interface LineTaker extends AutoCloseable {
    /**
     * Takes a line as an output that is at this level from the first moment: no click.
     *
     * @throws LinesRefused if the line is not there, is not ours, or is held by another program
     */
    RelayLine take(String machine, Wiring.GpioLine at, boolean high);

    /**
     * Lets go of the lines. Whether they keep their levels then is the kernel's affair: see {@link Pi4jLines}.
     */
    @Override
    void close();
}
