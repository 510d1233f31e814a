// SPDX-License-Identifier: EPL-2.0
package garboard.session.calculators;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The calculators of one run of the program: each remembers what was typed into it last, whichever record is open. */
public final class Calculators {

    private final Map<String, Calculator> made = new HashMap<>();
    private Optional<CalculatorList> list = Optional.empty();
    private Optional<String> last = Optional.empty();

    /** {@return all calculations} Made when it is first asked for. */
    public CalculatorList list() {
        if (list.isEmpty()) {
            list = Optional.of(CalculatorList.all());
        }
        return list.get();
    }

    /** {@return the calculator of a calculation, with what was typed into it last; it is now the last one used} */
    public Calculator open(CalculatorList.Entry entry) {
        last = Optional.of(entry.calculation().name());
        return made.computeIfAbsent(entry.calculation().name(), none -> new Calculator(entry));
    }

    /** {@return the calculation that was used last} */
    public Optional<CalculatorList.Entry> last() {
        return last.flatMap(name -> list().find(name));
    }
}
