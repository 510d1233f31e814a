// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.Supplier;

import garboard.checks.Catalogue;

/** The commands, in the order in which the help lists them. */
enum CommandName {
    NEW((terminal, catalogue) -> new NewCommand(terminal)), //
    FORM((terminal, catalogue) -> new FormCommand(terminal)), //
    READ((terminal, catalogue) -> new ReadCommand(terminal)), //
    CHECK(CheckCommand::new), //
    REPORT(ReportCommand::new), //
    CATALOGUE(CatalogueCommand::new), //
    CALCULATE((terminal, catalogue) -> new CalculateCommand(terminal));

    private final BiFunction<Terminal, Supplier<Catalogue>, Object> maker;

    CommandName(BiFunction<Terminal, Supplier<Catalogue>, Object> maker) {
        this.maker = maker;
    }

    Object create(Terminal terminal, Supplier<Catalogue> catalogue) {
        return maker.apply(terminal, catalogue);
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static List<String> all() {
        return Arrays.stream(values()).map(CommandName::word).toList();
    }

    static boolean isName(String word) {
        return all().contains(word);
    }

    static CommandName of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
