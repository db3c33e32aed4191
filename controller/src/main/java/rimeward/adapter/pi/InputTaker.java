package rimeward.adapter.pi;

import rimeward.site.InputLine;

/** Takes lines that are read. */
@FunctionalInterface
interface InputTaker {
    /**
     * Takes a line.
     *
     * @param what whose it is, for people: {@code the tank's float}
     * @param edges whether its changes are to be counted, not only its level looked at
     * @throws LinesRefused if the line is not there, is not ours, or is held by another program
     */
    TakenLine take(String what, InputLine at, boolean edges);
}
