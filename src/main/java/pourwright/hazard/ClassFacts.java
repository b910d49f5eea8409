package pourwright.hazard;

import java.util.List;

/** What the label says for a class: one line of {@code classes.csv}. */
record ClassFacts(
    HazardClass hazardClass,
    String statement,
    String signal,
    String pictogram,
    String side,
    boolean named,
    List<String> precautions) {}
