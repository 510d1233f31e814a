// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import com.google.gson.stream.JsonWriter;

import garboard.checks.Catalogue;
import garboard.checks.Check;
import garboard.checks.FeaturePath;
import garboard.checks.Practice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code catalogue}: every check with its limit, basis and gravity. */
@Command(name = "catalogue", description = { "Lists every check with what it needs, its limit, where that comes from and how grave a shortfall is.",
        "" }, footer = { "", "Example: garboard catalogue --format csv > checks.csv" })
final class CatalogueCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions common;

    @Option(names = "--format", paramLabel = "text|json|csv", defaultValue = "TEXT", description = "How to answer; text by default.")
    private Format format;

    private final Terminal terminal;
    private final Supplier<Catalogue> catalogue;

    CatalogueCommand(Terminal terminal, Supplier<Catalogue> catalogue) {
        this.terminal = terminal;
        this.catalogue = catalogue;
    }

    @Override
    public Integer call() throws IOException {
        switch (format) {
            case TEXT -> text(terminal.out());
            case JSON -> json(terminal.out());
            case CSV -> csv(terminal.out());
        }
        return ExitCode.NOTHING_FALLS_SHORT;
    }

    private void text(PrintStream out) {
        for (Practice practice : catalogue.get().practices()) {
            out.println(practice.name() + " [" + practice.id() + "], " + practice.checks().size() + " checks");
            Wrapping.lines(practice.appliesTo(), 96).forEach(line -> out.println("  " + line));
            for (Check<?> check : practice.checks()) {
                out.println();
                out.println("  " + check.id() + "  " + check.title());
                line(out, "limit", check.limitInWords());
                if (!check.appliesInWords().isEmpty()) {
                    line(out, "for", String.join("; ", check.appliesInWords()));
                }
                line(out, "needs", needs(check));
                line(out, "gravity", check.gravity().label());
                line(out, "basis", check.basis().toString());
                if (!check.basis().otherFigures().isBlank()) {
                    line(out, "others", check.basis().otherFigures());
                }
                line(out, "remedy", check.remedyInWords());
            }
            out.println();
        }
    }

    private static void line(PrintStream out, String label, String text) {
        String lead = "      " + label + " ".repeat(9 - label.length());
        boolean first = true;
        for (String line : Wrapping.lines(text, 84)) {
            out.println((first ? lead : " ".repeat(lead.length())) + line);
            first = false;
        }
    }

    private static String needs(Check<?> check) {
        return check.needs().stream().map(FeaturePath::toString).distinct().collect(Collectors.joining(", "));
    }

    private void json(PrintStream out) throws IOException {
        var json = new JsonWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        json.setIndent("  ");
        json.beginObject().name("format").value(VerdictJson.FORMAT).name("practices").beginArray();
        for (Practice practice : catalogue.get().practices()) {
            json.beginObject();
            json.name("id").value(practice.id()).name("name").value(practice.name()).name("appliesTo").value(practice.appliesTo());
            json.name("checks").beginArray();
            for (Check<?> check : practice.checks()) {
                check(json, check);
            }
            json.endArray().endObject();
        }
        json.endArray().endObject();
        json.flush();
        out.println();
    }

    private static void check(JsonWriter json, Check<?> check) throws IOException {
        json.beginObject();
        json.name("check").value(check.id()).name("title").value(check.title()).name("why").value(check.why());
        json.name("subject").value(check.subjectType().getName());
        json.name("applies").beginArray();
        for (String words : check.appliesInWords()) {
            json.value(words);
        }
        json.endArray().name("needs").beginArray();
        for (FeaturePath path : check.needs()) {
            json.value(path.toString());
        }
        json.endArray();
        json.name("limit").value(check.limitInWords());
        json.name("gravity").value(VerdictJson.word(check.gravity().label()));
        VerdictJson.basis(json.name("basis"), check.basis());
        json.name("remedy").value(check.remedyInWords());
        json.endObject();
    }

    private void csv(PrintStream out) {
        row(out, List.of("practice", "check", "title", "applies", "needs", "limit", "gravity", "basis", "status", "other figures", "remedy"));
        for (Practice practice : catalogue.get().practices()) {
            for (Check<?> check : practice.checks()) {
                row(out, List.of(practice.id(), check.id(), check.title(), String.join("; ", check.appliesInWords()), needs(check),
                        check.limitInWords(), check.gravity().label(), check.basis().citation(), check.basis().status().label(),
                        check.basis().otherFigures(), check.remedyInWords()));
            }
        }
    }

    /** RFC 4180: fields with a comma, a quote or a line break stand in quotes, quotes in them are doubled. */
    private static void row(PrintStream out, List<String> fields) {
        out.print(fields.stream()
                .map(field -> field.matches("(?s).*[\",\\r\\n].*") ? '"' + field.replace("\"", "\"\"") + '"' : field)
                .collect(Collectors.joining(",")) + "\r\n");
    }
}
