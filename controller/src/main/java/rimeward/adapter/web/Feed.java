package rimeward.adapter.web;

/** What those who follow live are told. Each of its topics counts up when there is something new; nobody is told the same twice. */
interface Feed {
    /** How many topics there are. */
    int topics();

    /** The newest number of a topic; 0 while there is nothing. Never waits. */
    long newest(int topic);

    /** The topic as it is now, as an event. On the server's thread; must be quick. */
    byte[] event(int topic);
}
