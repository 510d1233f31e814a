// SPDX-License-Identifier: EPL-2.0
package garboard.session.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import garboard.checks.Catalogue;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.InspectionAnswer;
import garboard.model.Photograph;
import garboard.model.io.RecordFile;
import garboard.session.OpenRecord;

class RecordPhotographsTest {

    private final OpenRecord open = OpenRecord.of(RecordFile.of(GarboardFactory.eINSTANCE.createCommissioningRecord()), Optional.empty(),
        Catalogue.of(), Clock.systemUTC());
    private final RecordPhotographs photographs = new RecordPhotographs(open);
    private Picture picture;

    @BeforeEach
    void makePicture() throws Exception {
        var out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(4, 3, BufferedImage.TYPE_INT_RGB), "png", out);
        picture = Picture.of(out.toByteArray());
    }

    private InspectionAnswer answer() {
        return open.edits().add(open.record(), List.of(Literals.COMMISSIONING_RECORD__INSPECTIONS),
            GarboardFactory.eINSTANCE.createInspectionAnswer(), "");
    }

    @Test
    void addsSeveralInOneStep() {
        List<Photograph> added = photographs.add(List.of(new RecordPhotographs.Found(picture, "Plate"), new RecordPhotographs.Found(picture, " ")), "Add");

        assertThat(photographs.all()).isEqualTo(added).extracting(Photograph::getCaption).containsExactly("Plate", null);
        assertThat(added).extracting(Photograph::getMediaType).containsOnly("image/png");
        assertThat(added).extracting(Photograph::getId).doesNotContainNull().doesNotHaveDuplicates();
        open.edits().undo();
        assertThat(photographs.all()).isEmpty();
    }

    @Test
    void laysThemToAnAnswerAndTakesThemAwayAgain() {
        InspectionAnswer answer = answer();
        Photograph photograph = photographs.addTo(answer, List.of(new RecordPhotographs.Found(picture, "Loop")), "Lay").getFirst();
        assertThat(photographs.answersWith(photograph)).containsExactly(answer);
        photographs.lay(answer, photograph, "Twice");
        assertThat(answer.getPhotographs()).containsExactly(photograph);

        photographs.takeAway(answer, photograph, "Away");
        assertThat(answer.getPhotographs()).isEmpty();
        assertThat(photographs.all()).containsExactly(photograph);
        open.edits().undo();
        open.edits().undo();
        assertThat(photographs.all()).isEmpty();
        assertThat(answer.getPhotographs()).isEmpty();
    }

    @Test
    void takesAPhotographAwayFromTheAnswersWhenItLeavesTheRecord() {
        InspectionAnswer answer = answer();
        Photograph photograph = photographs.addTo(answer, List.of(new RecordPhotographs.Found(picture, "Loop")), "Lay").getFirst();
        photographs.remove(photograph, "Out");
        assertThat(answer.getPhotographs()).isEmpty();
        open.edits().undo();
        assertThat(answer.getPhotographs()).containsExactly(photograph);
    }
}
