package rimeward.core.reading;

/** Why a sensor gave no number. */
public enum Loss {
    /** The bus or file did not answer. */
    NO_ANSWER,
    /** It answered, and the checksum was wrong. */
    BAD_CHECKSUM,
    /** It answered with one of the values that mean a fault (85 °C at power-on, an error number, …). */
    FAULT_VALUE
}
