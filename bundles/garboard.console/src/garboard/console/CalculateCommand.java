// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.CalculationException;
import garboard.physics.calculation.Calculations;
import garboard.physics.calculation.Parameter;
import garboard.quantity.Display;
import garboard.quantity.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code calculate}: one calculation of the trade by itself. */
@Command(name = "calculate", description = { "Answers one calculation of the trade by itself, with its formula and source.",
        "Without a name it lists all; with a name alone it says what that one takes.", "" }, footer = { "",
                "Example: garboard calculate heeled-height x=0 y=\"1 m\" z=\"0.45 m\" heel=\"30 deg\" trim=\"0 deg\"" })
final class CalculateCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions common;

    @Parameters(arity = "0..1", index = "0", paramLabel = "NAME", description = "The calculation.")
    private String name;

    @Parameters(arity = "0..*", index = "1..*", paramLabel = "ARGUMENT=VALUE", description = "Its arguments, with units: bore=\"3/4 in\".")
    private List<String> given = List.of();

    private final Terminal terminal;

    CalculateCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws CommandFailure {
        if (name == null) {
            list(terminal.out());
            return ExitCode.NOTHING_FALLS_SHORT;
        }
        Calculation calculation = Calculations.find(name).orElseThrow(() -> new CommandFailure(
                "There is no calculation \"" + name + "\"; 'garboard calculate' lists them all" + likely()));
        if (given.isEmpty() && !calculation.parameters().stream().allMatch(Parameter::mayBeLeftOut)) {
            describe(terminal.out(), calculation);
            return ExitCode.NOTHING_FALLS_SHORT;
        }
        try {
            answer(terminal.out(), calculation, calculation.evaluate(arguments(calculation)));
        } catch (CalculationException wrong) {
            throw new CommandFailure(wrong.getMessage(), wrong);
        }
        return ExitCode.NOTHING_FALLS_SHORT;
    }

    private String likely() {
        List<String> near = Calculations.all().stream().map(Calculation::name).filter(known -> shares(known, name)).limit(4).toList();
        return near.isEmpty() ? "" : " (did you mean " + String.join(" or ", near) + "?)";
    }

    private static boolean shares(String known, String typed) {
        List<String> parts = List.of(known.split("-"));
        return List.of(typed.split("-")).stream().anyMatch(part -> part.length() > 2 && parts.contains(part));
    }

    private Map<String, String> arguments(Calculation calculation) throws CommandFailure {
        var arguments = new LinkedHashMap<String, String>();
        for (String argument : given) {
            int equals = argument.indexOf('=');
            if (equals < 1) {
                throw new CommandFailure("\"" + argument + "\" is not ARGUMENT=VALUE; " + calculation.name() + " takes " + names(calculation));
            }
            String key = argument.substring(0, equals).strip();
            if (arguments.put(key, argument.substring(equals + 1).strip()) != null) {
                throw new CommandFailure(key + " is given twice");
            }
        }
        return arguments;
    }

    private static String names(Calculation calculation) {
        return calculation.parameters().stream().map(Parameter::name).collect(Collectors.joining(", "));
    }

    private static void list(PrintStream out) {
        int width = Calculations.all().stream().mapToInt(calculation -> calculation.name().length()).max().orElse(0);
        for (Calculation calculation : Calculations.all()) {
            out.println(calculation.name() + " ".repeat(width + 2 - calculation.name().length()) + calculation.title());
        }
        out.println();
        out.println("'garboard calculate NAME' says what one takes.");
    }

    private static void describe(PrintStream out, Calculation calculation) {
        out.println(calculation.name() + ": " + calculation.title());
        Wrapping.lines(calculation.explanation(), 96).forEach(line -> out.println("  " + line));
        out.println();
        for (Parameter<?> parameter : calculation.parameters()) {
            String rest = parameter.defaultText().map(text -> "; " + text + " if left out")
                    .orElse(parameter.mayBeLeftOut() ? "; may be left out" : "");
            out.println("  " + parameter.name() + "  " + parameter.meaning() + " (" + parameter.accepts() + ")" + rest);
        }
        out.println();
        basis(out, calculation);
    }

    private static void answer(PrintStream out, Calculation calculation, Answer answer) {
        out.println(calculation.title());
        for (Answer.Result result : answer.results()) {
            switch (result) {
                case Answer.Figure figure -> out.println("  " + figure.name() + " = " + figure(figure));
                case Answer.Words words -> out.println("  " + words.name() + ": " + words.text());
            }
        }
        answer.warnings().forEach(warning -> out.println("  Note: " + warning));
        out.println();
        basis(out, calculation);
    }

    /** In the units that the calculation prefers, else in the customary ones of both systems. */
    private static String figure(Answer.Figure figure) {
        Stream<String> texts = figure.units().isEmpty()
                ? Stream.of(UnitSystem.values()).map(system -> Display.of(system).format(figure.quantity()))
                : figure.units().stream().map(unit -> Display.formatIn(figure.quantity(), unit));
        return texts.distinct().collect(Collectors.joining(" = "));
    }

    private static void basis(PrintStream out, Calculation calculation) {
        out.println("  formula  " + calculation.formula());
        out.println("  valid    " + calculation.validity());
        out.println("  source   " + calculation.source());
    }
}
