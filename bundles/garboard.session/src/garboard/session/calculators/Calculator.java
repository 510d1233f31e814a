// SPDX-License-Identifier: EPL-2.0
package garboard.session.calculators;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.CalculationException;
import garboard.quantity.Display;
import garboard.quantity.Quantity;
import garboard.quantity.UnitSystem;
import garboard.session.entry.EntryReader;
import garboard.session.entry.Reading;

/** A calculation being filled in. Remembers the texts of its inputs. */
public final class Calculator {

    private final Subject subject;
    private final Calculation calculation;
    private final List<CalculatorInput> inputs;
    private final Map<String, String> texts = new HashMap<>();

    Calculator(CalculatorList.Entry entry) {
        this.subject = entry.subject();
        this.calculation = entry.calculation();
        this.inputs = calculation.parameters().stream().map(CalculatorInput::new).toList();
    }

    public Subject subject() {
        return subject;
    }

    public Calculation calculation() {
        return calculation;
    }

    public List<CalculatorInput> inputs() {
        return inputs;
    }

    /** {@return what is typed in an input, empty when nothing is} */
    public String text(CalculatorInput input) {
        return texts.getOrDefault(input.name(), "");
    }

    public void type(CalculatorInput input, String text) {
        texts.put(input.name(), text);
    }

    /** Empties all inputs. */
    public void clear() {
        texts.clear();
    }

    /** {@return the answer to the inputs as they stand} */
    public Answering answer(EntryReader reader) {
        List<CalculatorInput> unread = inputs.stream().filter(input -> !isRead(input, reader)).toList();
        if (!unread.isEmpty()) {
            return new Answering.Unread(unread);
        }
        List<CalculatorInput> needed = inputs.stream().filter(input -> input.required() && text(input).isBlank()).toList();
        if (!needed.isEmpty()) {
            return new Answering.Waiting(needed);
        }
        Map<String, String> arguments = new LinkedHashMap<>();
        inputs.forEach(input -> input.argument(text(input), reader).ifPresent(argument -> arguments.put(input.name(), argument)));
        try {
            return answered(calculation.evaluate(arguments), reader.system());
        } catch (CalculationException refused) {
            return new Answering.Refused(inputs.stream().filter(input -> input.name().equals(refused.argument())).findFirst(), refused.getMessage());
        }
    }

    private boolean isRead(CalculatorInput input, EntryReader reader) {
        Reading reading = input.read(text(input), reader);
        return reading instanceof Reading.Empty || reading instanceof Reading.Entered;
    }

    private static Answering answered(Answer answer, UnitSystem system) {
        var lines = new ArrayList<Answering.Line>();
        for (Answer.Result result : answer.results()) {
            lines.add(switch (result) {
                case Answer.Figure figure -> line(figure, system);
                case Answer.Words words -> new Answering.Line(words.name(), List.of(words.text()), Optional.empty());
            });
        }
        return new Answering.Answered(lines, answer.warnings());
    }

    /** In the units that the calculation prefers, else in the customary ones of both systems, those of the person first. */
    private static Answering.Line line(Answer.Figure figure, UnitSystem system) {
        UnitSystem other = system == UnitSystem.SI ? UnitSystem.US : UnitSystem.SI;
        List<String> shown = (figure.units().isEmpty()
            ? Stream.of(system, other).map(one -> Display.of(one).format(figure.quantity()))
            : figure.units().stream().map(unit -> Display.formatIn(figure.quantity(), unit))).distinct().toList();
        return new Answering.Line(figure.name(), shown, Optional.of(asShown(figure.quantity(), shown.getFirst())));
    }

    /** What was read on the screen is what stands in the record afterwards, and not more digits. */
    private static Quantity<?> asShown(Quantity<?> exact, String shown) {
        return exact.kind().parse(shown);
    }
}
