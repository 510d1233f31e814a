// SPDX-License-Identifier: EPL-2.0
package garboard.practice;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Practice;

/** The catalogue as a whole: nothing declared is left out, nothing is there twice, every check is tested, and all speak alike. */
class CatalogueTest {

    /** A class with a check of its own, and the call that names the check. */
    private static final Pattern DECLARES = Pattern.compile("static Check<\\w+> check\\(\\) \\{");
    private static final Pattern NAMES = Pattern.compile("\\b\\w+\\(\\s*\"([A-Z][A-Z0-9]*(?:-[A-Z0-9]+)+)\"");

    private static final Map<String, String> PREFIX_OF_SYSTEM = Map.ofEntries(entry("siphon", "SIPHON-"), entry("exhaust", "EXHAUST-"),
        entry("rawwater", "RAWWATER-"), entry("fuel", "FUEL-"), entry("ventilation", "VENT-"), entry("battery", "BATTERY-"),
        entry("cable", "CABLE-"), entry("ac", "AC-"), entry("set", "SET-"), entry("mounting", "MOUNTING-"), entry("alarms", "ALARM-"));

    private final List<Practice> practices =
        List.of(new HandbookPractice(), new SmallCraftStandards(), new FederalGasolineCraft(), new SmallPassengerVessels());
    private final List<Check<?>> checks = practices.stream().<Check<?>>flatMap(practice -> practice.checks().stream()).toList();

    @Test
    void everyCheckThatIsDeclaredBelongsToExactlyOnePractice() {
        assertThat(checks).extracting(Check::id).as("checks of the practices against those declared in the sources")
            .containsExactlyInAnyOrderElementsOf(declared().values());
    }

    @Test
    void everyCheckHasATestOfItsName() {
        Path tests = repository().resolve("tests/garboard.practice.tests/src/garboard/practice");
        assertThat(declared().keySet()).filteredOn(name -> !Files.exists(tests.resolve(name + "Test.java"))).as("classes without a test").isEmpty();
    }

    @Test
    void idsAndTitlesAreThereOnceAndTellTheSystem() {
        assertThat(checks).hasSizeGreaterThanOrEqualTo(60);
        assertThat(checks).extracting(Check::id).doesNotHaveDuplicates();
        assertThat(checks).extracting(Check::title).doesNotHaveDuplicates();
        declared().forEach((name, id) -> assertThat(id).as(name).startsWith(PREFIX_OF_SYSTEM.get(name.substring(0, name.indexOf('/')))));
    }

    @Test
    void headingsEndWithoutAFullStopAndReasonsWithOne() {
        String heading = "[A-Z0-9].*[^.,;: ]";
        assertThat(notLike(heading, Check::title)).as("titles").isEmpty();
        assertThat(notLike(heading, Check::remedyInWords)).as("remedies").isEmpty();
        assertThat(notLike("\\S.*[^.,;: ]", Check::limitInWords)).as("limits").isEmpty();
        assertThat(notLike("[A-Z0-9].*[^. ]\\.", Check::why)).as("reasons").isEmpty();
    }

    private List<String> notLike(String pattern, Function<Check<?>, String> text) {
        return checks.stream().map(text).filter(found -> !found.matches(pattern) || found.contains("  ")).toList();
    }

    @Test
    void lawStandsAmongTheLawAloneAndAppliesWhereItBinds() {
        for (Practice practice : practices) {
            boolean gasoline = practice instanceof FederalGasolineCraft;
            boolean passengers = practice instanceof SmallPassengerVessels;
            assertThat(practice.checks()).allSatisfy(check -> {
                assertThat(check.basis().isRegulation()).as(check.id()).isEqualTo(gasoline || passengers);
                if (gasoline || passengers) {
                    assertThat(check.basis().citation()).as(check.id()).matches(gasoline ? "(33 CFR 183|46 CFR 25|40 CFR 10(48|54))\\..*" : "46 CFR .*");
                    assertThat(String.join("; ", check.appliesInWords())).as(check.id()).contains(gasoline ? "gasoline" : "small passenger vessels");
                }
            });
        }
    }

    /** A remembered figure must not look like a read one, so a source has one status, and that is where it is registered. */
    @Test
    void everySourceIsRegisteredWithItsStatus() {
        List<Basis> registered = registered();
        assertThat(checks).allSatisfy(check -> {
            Basis basis = check.basis().othersSay("");
            assertThat(basis.citation()).as(check.id()).isNotBlank();
            switch (basis.kind()) {
                case STANDARD, HANDBOOK, TRADE_PRESS -> assertThat(registered).as(check.id()).contains(basis);
                case COMMON_PRACTICE -> assertThat(basis.citation()).as(check.id()).startsWith("common practice");
                case DERIVED -> assertThat(basis.status()).as(check.id()).isEqualTo(Basis.Status.DERIVED);
                case REGULATION -> assertThat(basis.status()).as(check.id())
                    .isIn(Basis.Status.RETRIEVED, Basis.Status.QUOTED, Basis.Status.FROM_MEMORY);
            }
        });
    }

    @Test
    void everyRegisteredSourceIsCited() {
        assertThat(checks).extracting(check -> check.basis().othersSay("")).containsAll(registered());
    }

    private static List<Basis> registered() {
        return Arrays.stream(Sources.class.getFields()).filter(field -> Modifier.isStatic(field.getModifiers())).map(field -> {
            try {
                return (Basis) field.get(null);
            } catch (IllegalAccessException e) {
                throw new IllegalStateException(e);
            }
        }).toList();
    }

    /** Each class with a check, as system and name, and the id that it declares. */
    private static Map<String, String> declared() {
        var declared = new TreeMap<String, String>();
        Path sources = repository().resolve("bundles/garboard.practice/src/garboard/practice");
        for (String system : PREFIX_OF_SYSTEM.keySet()) {
            for (Path file : files(sources.resolve(system))) {
                String text = text(file);
                if (DECLARES.matcher(text).find()) {
                    Matcher id = NAMES.matcher(text);
                    assertThat(id.find()).as("an id in %s", file).isTrue();
                    declared.put(system + "/" + file.getFileName().toString().replace(".java", ""), id.group(1));
                }
            }
        }
        return declared;
    }

    /** The repository that the build names, or else the one around the working directory. */
    private static Path repository() {
        Path start = Path.of(System.getProperty("garboard.repository", "")).toAbsolutePath();
        for (Path folder = start; folder != null; folder = folder.getParent()) {
            if (Files.isDirectory(folder.resolve("bundles/garboard.practice/src"))) {
                return folder;
            }
        }
        throw new IllegalStateException("no repository at or above " + start);
    }

    private static List<Path> files(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
