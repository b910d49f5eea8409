package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import pourwright.label.EuropeanNet;
import pourwright.label.NetContents;
import pourwright.label.NetSample;
import pourwright.label.UnitedStatesNet;

/** {@code net-contents}: the verdict over a weighed sample of a lot. */
final class NetContentsComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    boolean us = in.choice("system", "us", "eu").equals("us");
    NetSample sample =
        new NetSample(
            in.number("label_g", Range.POSITIVE),
            in.whole("lot_size", 1, 100_000_000),
            Arrays.stream(in.numbers("net_g", Range.NOT_NEGATIVE)).boxed().toList());
    NetContents found = us ? UnitedStatesNet.judge(sample) : EuropeanNet.judge(sample);
    out.put("average_error_g", found.averageErrorG());
    out.put("standard_deviation_g", found.standardDeviationG());
    out.put("error_limit_g", found.errorLimitG());
    out.put("individual_allowance_g", found.individualAllowanceG());
    out.put("beyond_allowance", found.beyondAllowance());
    NetContents.Verdict verdict = found.verdict();
    out.put("verdict", verdict == null ? null : verdict.code());
    out.put(
        "sample_size_asked",
        us
            ? UnitedStatesNet.sampleSize(sample.lotSize())
            : EuropeanNet.sampleSize(sample.lotSize()));
    ArrayNode reasons = out.putArray("reasons");
    found.reasons().forEach(reasons::add);
    found.warnings().forEach(w -> out.withArray("warnings").add(w));
  }
}
