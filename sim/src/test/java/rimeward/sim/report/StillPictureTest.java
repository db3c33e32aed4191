package rimeward.sim.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import rimeward.sim.run.Comparison;

final class StillPictureTest {
    private final Comparison night = ToyNight.comparison(36, false, "duty", "thermostat", "dryer-alone", "by-hand");
    private final String picture = StillPicture.of(night);

    @Test
    void isOneWellFormedFileWithWords() throws Exception {
        Document parsed = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(picture)));
        assertThat(parsed.getDocumentElement().getTagName()).isEqualTo("svg");
        assertThat(parsed.getElementsByTagName("desc").item(0).getTextContent()).startsWith("The floor of 4.0 °C held");
    }

    @Test
    void needsNoOtherFile() {
        assertThat(picture.replace("http://www.w3.org/2000/svg", ""))
                .doesNotContainPattern("https?:|href|url\\(|<script");
    }

    @Test
    void namesEveryLaw() {
        assertThat(picture).contains(">duty</text>", ">thermostat</text>", ">dryer-alone</text>", ">by-hand</text>");
    }

    @Test
    void sameNightGivesSamePicture() {
        assertThat(StillPicture.of(ToyNight.comparison(36, false, "duty", "thermostat", "dryer-alone", "by-hand")))
                .isEqualTo(picture);
    }
}
