// SPDX-License-Identifier: EPL-2.0
package garboard.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;

/** Entry point: {@code regenerate ROOT SCRATCH} or {@code check ROOT SCRATCH}, ROOT being the repository. */
public final class Codegen {

    private Codegen() {
    }

    public static void main(String[] args) throws IOException, CodegenException {
        if (args.length != 3) {
            throw new CodegenException("Three arguments are needed: regenerate or check, the repository, a scratch folder");
        }
        var committed = new ModelProjects(Path.of(args[1], "bundles"));
        var scratch = Path.of(args[2]);
        if (!committed.haveModel()) {
            System.out.println("No " + committed.ecore() + " yet: nothing to generate.");
            return;
        }
        clear(scratch);
        var files = new GeneratedFiles(ModelGenerator.generate(committed, scratch), committed);
        switch (args[0]) {
            case "regenerate" -> regenerate(files);
            case "check" -> check(files);
            default -> throw new CodegenException("Found '" + args[0] + "'; regenerate or check would be right");
        }
    }

    private static void regenerate(GeneratedFiles files) throws IOException {
        var changes = files.differences();
        files.carryOver();
        changes.forEach(System.out::println);
        System.out.println(changes.size() + " generated files brought up to date.");
    }

    /** Fails when the committed code is not exactly what the model gives. */
    static void check(GeneratedFiles files) throws IOException, CodegenException {
        var differences = files.differences();
        if (!differences.isEmpty()) {
            throw new CodegenException("The generated code does not match the Ecore model. Run releng/regenerate and commit"
                    + " the result; never edit generated files by hand.\n  " + String.join("\n  ", differences));
        }
        System.out.println("The generated code matches the Ecore model.");
    }

    private static void clear(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (var found = Files.walk(folder)) {
                for (Path path : found.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
        Files.createDirectories(folder);
    }
}
