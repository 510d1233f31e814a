// SPDX-License-Identifier: EPL-2.0
package garboard.bench;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.util.Statistics;

import garboard.examples.Example;
import garboard.examples.Examples;

/** Runs the benchmarks that JMH's arguments choose and sums them up: medians, and the ratios that we hold ourselves to. */
final class Run {

    /** Arguments that only ask JMH something. */
    private static final Set<String> QUESTIONS = Set.of("-h", "-l", "-lp", "-lprof", "-lrf");

    /** @param title what is compared; @param what the benchmark; @param with the least that it could take */
    private record Ratio(String title, String what, String with) {
    }

    private static final List<Ratio> RATIOS = List.of(
        new Ratio("report : bare POI", "WorkbookBenchmark.report", "WorkbookBenchmark.bare"),
        new Ratio("record : bare XMI", "LoadBenchmark.open", "LoadBenchmark.bare"),
        new Ratio("record : bare XMI, fast options", "LoadBenchmark.open", "LoadBenchmark.bareFast"));

    private Run() {
    }

    public static void main(String[] args) throws Exception {
        if (List.of(args).stream().anyMatch(QUESTIONS::contains)) {
            org.openjdk.jmh.Main.main(args);
            return;
        }
        sumUp(new Runner(options(args).build()).run());
    }

    private static ChainedOptionsBuilder options(String[] args) throws CommandLineOptionException {
        var asked = new CommandLineOptions(args);
        // Single calls are timed, because what a person waits for is one call, and a median forgives other work on the machine.
        ChainedOptionsBuilder options = new OptionsBuilder().parent(asked).shouldFailOnError(asked.shouldFailOnError().orElse(true));
        if (asked.getBenchModes().isEmpty()) {
            options.mode(Mode.SampleTime);
        }
        options.timeUnit(asked.getTimeUnit().orElse(TimeUnit.MILLISECONDS));
        options.forks(asked.getForkCount().orElse(3));
        options.warmupIterations(asked.getWarmupIterations().orElse(4));
        options.warmupTime(asked.getWarmupTime().orElse(TimeValue.seconds(1)));
        options.measurementIterations(asked.getMeasurementIterations().orElse(5));
        options.measurementTime(asked.getMeasurementTime().orElse(TimeValue.seconds(1)));
        if (!asked.getParameter("example").hasValue()) {
            options.param("example", Examples.all().stream().map(Example::name).toArray(String[]::new));
        }
        return options;
    }

    private static void sumUp(Collection<RunResult> results) {
        var medians = new TreeMap<String, Double>();
        System.out.printf("%n%-62s %12s %25s%n", "milliseconds", "median", "a quarter below, above");
        for (RunResult result : results) {
            Statistics times = result.getPrimaryResult().getStatistics();
            String name = name(result);
            medians.put(name, times.getPercentile(50));
            System.out.printf(Locale.ROOT, "%-62s %12.4f %12.4f %12.4f%n", name, times.getPercentile(50), times.getPercentile(25),
                times.getPercentile(75));
        }
        for (Ratio ratio : RATIOS) {
            medians.forEach((name, median) -> {
                String other = name.replace(ratio.what + " ", ratio.with + " ");
                if (name.startsWith(ratio.what + " ") && medians.containsKey(other)) {
                    System.out.printf(Locale.ROOT, "%-62s %12.2f%n", ratio.title + name.substring(ratio.what.length()), median / medians.get(other));
                }
            });
        }
    }

    /** Class, method and parameters, without packages. */
    private static String name(RunResult result) {
        String[] parts = result.getParams().getBenchmark().split("\\.");
        var name = new StringBuilder(parts[parts.length - 2] + "." + parts[parts.length - 1] + " ");
        result.getParams().getParamsKeys().forEach(key -> name.append(' ').append(result.getParams().getParam(key)));
        return name.toString();
    }
}
