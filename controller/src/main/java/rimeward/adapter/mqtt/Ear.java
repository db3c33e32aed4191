package rimeward.adapter.mqtt;

/** Where a line puts what comes in; only takes note, and so never blocks. Called by the line's own threads. */
interface Ear {
    /**
     * A message has come.
     *
     * @param retained whether it is an old one that the broker kept
     * @param duplicate whether it may have come before (MQTT's DUP)
     */
    void heard(String topic, byte[] payload, boolean retained, boolean duplicate);

    /** The line broke. */
    void lost(String why);
}
