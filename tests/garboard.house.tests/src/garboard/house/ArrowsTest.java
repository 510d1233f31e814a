// SPDX-License-Identifier: EPL-2.0
package garboard.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds every manifest to the table of arrows. */
class ArrowsTest {

    private static final Repository REPOSITORY = Repository.find();

    static List<Path> bundles() {
        return REPOSITORY.bundles();
    }

    static List<Path> tests() {
        return REPOSITORY.tests();
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void seesOnlyWhatTheTableAllows(Path bundle) {
        var manifest = new BundleManifest(bundle);
        assertThat(Arrows.TABLE).as("a row of the table for every bundle").containsKey(manifest.symbolicName());
        var sight = Arrows.TABLE.get(manifest.symbolicName());
        var seen = Stream.concat(manifest.requiredBundles().stream(), manifest.importedPackages().stream());
        assertThat(seen.filter(name -> !sight.allows(name))).as("what %s sees against the table", manifest.symbolicName()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void isNamedLikeItsFolderAndRunsOnJava21(Path bundle) {
        var manifest = new BundleManifest(bundle);
        assertThat(manifest.symbolicName()).isEqualTo(bundle.getFileName().toString());
        assertThat(manifest.executionEnvironment()).isEqualTo("JavaSE-21");
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void exportsPackagesThatExist(Path bundle) {
        var missing = new BundleManifest(bundle).exportedPackages().stream().filter(name -> Stream.of("src", "src-gen")
                .noneMatch(source -> Files.isDirectory(bundle.resolve(source).resolve(name.replace('.', '/')))));
        assertThat(missing).as("exported packages without a folder").isEmpty();
    }

    /** A fragment sees what is package-private; the tests of the window are a bundle, for they see it as a person does. */
    @ParameterizedTest
    @MethodSource("bundles")
    void hasTestsNamedAfterIt(Path bundle) {
        var name = bundle.getFileName().toString();
        var tests = new BundleManifest(REPOSITORY.root().resolve("tests").resolve(name + ".tests"));
        assertThat(Stream.concat(tests.fragmentHost().stream(), tests.requiredBundles().stream())).contains(name);
    }

    @ParameterizedTest
    @MethodSource("tests")
    void testProjectIsNamedLikeItsFolder(Path project) {
        assertThat(new BundleManifest(project).symbolicName()).isEqualTo(project.getFileName().toString());
    }

    @Test
    void tableNamesNoBundleThatIsGone() {
        assertThat(Arrows.TABLE.keySet())
                .isSubsetOf(REPOSITORY.bundles().stream().map(bundle -> bundle.getFileName().toString()).toList());
    }

    @Test
    void arrowsPointOneWay() {
        Arrows.TABLE.forEach((bundle, sight) -> assertThat(sight.own()).as("what %s sees", bundle)
                .noneMatch(other -> Arrows.TABLE.get(other).own().contains(bundle)).doesNotContain(bundle));
    }

    @Test
    void tableRefusesWhatItDoesNotName() {
        var physics = Arrows.TABLE.get("garboard.physics");
        assertThat(physics.allows("garboard.quantity")).isTrue();
        assertThat(physics.allows("org.hipparchus.stat")).isTrue();
        assertThat(physics.allows("javax.xml.parsers")).isTrue();
        assertThat(physics.allows("garboard.model")).isFalse();
        assertThat(physics.allows("org.eclipse.emf.ecore")).isFalse();
        assertThat(physics.allows("org.hipparchusother")).isFalse();
    }
}
