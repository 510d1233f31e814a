// SPDX-License-Identifier: EPL-2.0
package garboard.codegen;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The two projects that hold generated code, and which of their files the generator owns.
 *
 * @param bundles the folder that holds both projects
 */
record ModelProjects(Path bundles) {

    static final String MODEL = "garboard.model";
    static final String EDIT = "garboard.model.edit";

    /** Everything in these places is generated: a file that the generator does not write is one too many. */
    static final List<Path> GENERATED = List.of(
            Path.of(MODEL, "src-gen"),
            Path.of(EDIT, "src-gen"),
            Path.of(EDIT, "plugin.properties"));

    Path modelFolder() {
        return bundles.resolve(MODEL).resolve("model");
    }

    Path ecore() {
        return modelFolder().resolve("garboard.ecore");
    }

    Path genmodel() {
        return modelFolder().resolve("garboard.genmodel");
    }

    /** False while there is no model yet; then there is nothing to generate. */
    boolean haveModel() {
        return Files.exists(ecore());
    }
}
