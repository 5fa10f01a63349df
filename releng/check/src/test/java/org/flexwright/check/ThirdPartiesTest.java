package org.flexwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;

/** What is shipped is known and under a licence that fits. */
class ThirdPartiesTest {

    private static final String TARGET = "<dependency><groupId>g</groupId><artifactId>a</artifactId></dependency>";
    private static final String FEATURE = "<plugin id=\"b\" version=\"0.0.0\"/>";

    @Test
    void theRepositoryAgreesWithItself() throws IOException {
        assertEquals(List.of(), ThirdParties.of(Path.of("..", "..")).violations());
    }

    @Test
    void threeThatAgreePass() {
        assertEquals(List.of(), violations(TARGET, List.of("# a comment", "g:a\tMIT\tb"), FEATURE));
    }

    @Test
    void aPartWithoutALineIsNamed() {
        assertEquals(List.of("g:a is in the target platform and not in the table of third parties."),
                violations(TARGET, List.of(), ""));
    }

    @Test
    void aLineWithoutAPartIsNamed() {
        assertEquals(List.of("g:a is in the table of third parties and not in the target platform."),
                violations("", List.of("g:a\tMIT\t-"), ""));
    }

    @Test
    void aBundleThatIsNotShippedIsNamed() {
        assertEquals(List.of("b is in the table of third parties and not in the platform feature."),
                violations(TARGET, List.of("g:a\tMIT\tb"), ""));
    }

    @Test
    void aBundleThatNobodyKnowsIsNamed() {
        assertEquals(List.of("b is in the platform feature and not in the table of third parties."),
                violations(TARGET, List.of("g:a\tMIT\t-"), FEATURE));
    }

    @Test
    void aLicenceThatDoesNotFitIsRefused() {
        assertEquals(List.of("g:a is under GPL-3.0-only, which is not among the licences that fit."),
                violations(TARGET, List.of("g:a\tGPL-3.0-only\tb"), FEATURE));
    }

    @Test
    void aLicenceForTestsAloneIsNotShipped() {
        assertEquals(List.of(), violations(TARGET, List.of("g:a\tEPL-1.0\t-"), ""));
        assertEquals(List.of("g:a is under EPL-1.0, which is not among the licences that fit."),
                violations(TARGET, List.of("g:a\tEPL-1.0\tb"), FEATURE));
    }

    @Test
    void aLineWithTooFewCellsIsNamed() {
        assertEquals(List.of("The line 'g:a\tMIT' has 2 cells; three are needed."),
                violations("", List.of("g:a\tMIT"), ""));
    }

    private static List<String> violations(String target, List<String> table, String feature) {
        return new ThirdParties(target, table, feature).violations();
    }
}
