package rimeward.adapter.pi;

/** Something that a thread of its own asks again and again, and that keeps what it heard for the control loop. */
interface Watched {
    /** Asks it once. May take its time, or hang: only its own thread calls it. */
    void ask();

    /** Lets go of what it holds; the same thread's last call. */
    default void letGo() {}
}
