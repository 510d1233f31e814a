// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What people call the classes, fields and choices of the model, and how a field is measured or inspected, in one language.
 * {@code labels.properties} and {@code how.properties} hold the English texts; a translation is laid over them from
 * {@code labels_de.properties} and the like, which are read for their own language only. What has no text is called by its name in
 * the model, taken apart into words.
 */
public final class Labels {

    /** Between the steps of a path in words. */
    static final String STEP = " › ";

    private final Locale locale;
    private final Texts labels;
    /** Read when first asked for: most callers want the labels only, and the console must start fast. */
    private volatile Texts how;
    private volatile Refusals refusals;

    private Labels(Locale locale) {
        this.locale = locale;
        this.labels = Texts.read("labels", locale);
    }

    /** {@return the labels in a language, English where it is not translated} */
    public static Labels in(Locale locale) {
        return new Labels(locale);
    }

    /** {@return what a class of parts is called, for example {@code Siphon break}} */
    public String label(EClass type) {
        return labels.find(type.getName()).orElseGet(() -> Camel.words(type.getName()));
    }

    /** {@return what a field is called, for example {@code Vent seat}} */
    public String label(EStructuralFeature feature) {
        return labels.find(key(feature)).orElseGet(() -> Camel.words(feature.getName()));
    }

    /** {@return what a choice is called, for example {@code Sailing monohull}} */
    public String label(Enumerator choice) {
        return labels.find(key(choice)).orElseGet(() -> Camel.words(choice.getName()));
    }

    /**
     * {@return the choice that a person means by a text} What the choice is called in this language, what it is called in English and
     * how a record file writes it all count, in capitals or not; blanks around it do not.
     */
    public Optional<EEnumLiteral> choice(EEnum choices, String text) {
        String called = text.strip();
        return choices.getELiterals().stream().filter(literal -> called.equalsIgnoreCase(literal.getLiteral())
            || called.equalsIgnoreCase(label(literal)) || labels.findEnglish(key(literal)).filter(called::equalsIgnoreCase).isPresent())
            .findFirst();
    }

    /** {@return the labels of a chain of fields, for example {@code Siphon break › Vent seat › z}} */
    public String labelOfPath(List<? extends EStructuralFeature> path) {
        return path.stream().map(this::label).collect(Collectors.joining(STEP));
    }

    /** {@return what to measure or look at, where and with what, for a field that an installer or surveyor takes on board} */
    public Optional<String> how(EStructuralFeature feature) {
        Texts texts = how;
        if (texts == null) {
            texts = Texts.read("how", locale);
            how = texts;
        }
        return texts.find(key(feature));
    }

    /** {@return the sentences about texts that are no value, in this language} */
    Refusals refusals() {
        Refusals sentences = refusals;
        if (sentences == null) {
            sentences = Refusals.in(locale);
            refusals = sentences;
        }
        return sentences;
    }

    private static String key(EStructuralFeature feature) {
        return feature.getEContainingClass().getName() + "." + feature.getName();
    }

    private static String key(Enumerator choice) {
        String type = choice instanceof EEnumLiteral literal ? literal.getEEnum().getName()
            : ((Enum<?>) choice).getDeclaringClass().getSimpleName();
        return type + "." + choice.getName();
    }
}
