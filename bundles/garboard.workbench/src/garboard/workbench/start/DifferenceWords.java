// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import garboard.model.FieldText;
import garboard.model.Labels;
import garboard.model.RecordPath;
import garboard.session.journal.Difference;
import garboard.workbench.text.Texts;

/** A difference between two records in a line. */
final class DifferenceWords {

    private static final int LONGEST = 60;

    private final Labels labels;
    private final Texts.Of texts;

    DifferenceWords(Labels labels, Texts.Of texts) {
        this.labels = labels;
        this.texts = texts;
    }

    String line(Difference difference) {
        String place = RecordPath.words(difference.owner(), difference.feature(), labels);
        return texts.get("difference", place, value(difference, difference.before()), value(difference, difference.now()));
    }

    private String value(Difference difference, Optional<Object> value) {
        return value.map(one -> shortened(text(difference, one))).orElse(texts.get("difference.nothing"));
    }

    private String text(Difference difference, Object value) {
        return switch (value) {
            case byte[] bytes -> texts.get("difference.picture", (bytes.length + 1023) / 1024);
            case List<?> several -> several.stream().map(String::valueOf).collect(Collectors.joining(", "));
            case EObject part -> labels.label(part.eClass());
            default -> difference.feature() instanceof EAttribute attribute ? FieldText.text(attribute.getEAttributeType(), value, labels)
                : String.valueOf(value);
        };
    }

    private static String shortened(String text) {
        String line = text.replaceAll("\\s+", " ").strip();
        return line.length() > LONGEST ? line.substring(0, LONGEST) + "…" : line;
    }
}
