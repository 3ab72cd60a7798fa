import QtQuick
import QtTest
import Mountwright.Alert
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme

// What an alert is made of: the piece with its bracket, the words set close, and how large they can stand.
Item {
    id: root
    width: 1280
    height: 800

    WetPiece {
        id: piece
        width: 300
        height: 334
        drawing: demo.alert.drawing
        wet: demo.alert.wet
        says: "wet"
    }
    WetPiece {
        id: small
        x: 320
        width: 100
        height: 80
        drawing: demo.alert.drawing
        wet: demo.alert.wet
    }
    FarWords {
        id: words
        x: 400
        width: 400
        color: Theme.ink
        text: "Halves Hall"
        size: 100
    }
    AlertFit {
        id: fit
        word: "Test now"
        sentence: "Knuckle clicks, stays clean?"
        more: []
        shortly: []
        left: 330
        top: 105
        bottom: 466
        right: 1256
        narrowRight: 1256
        keysTop: 800
    }
    TestCase {
        name: "Wet"
        when: windowShown

        function brackets(item) {
            const all = [];
            for (let i = 0; i < item.children.length; ++i) {
                if (item.children[i].objectName === "bracket")
                    all.push(item.children[i]);
            }
            return all;
        }
        function fitted(word, sentence, bottom) {
            fit.word = word;
            fit.sentence = sentence;
            fit.bottom = bottom;
            return fit.chosen;
        }

        function test_1_withoutAPieceNothingIsPointedTo() {
            verify(!piece.bracketed);
            compare(brackets(piece).length, 0);
            verify(!findChild(piece, "wet").visible);
        }
        function test_2_aBracketOutsideThePieceSpansWhatIsWet() {
            verify(stage.workUntilAWindowCalls());
            tryVerify(() => piece.bracketed);
            for (const one of [piece, small]) {
                tryVerify(() => one.place.height > 0);
                verify(one.place.x >= one.whole.x - 1 && one.place.x + one.place.width <= one.whole.x + one.whole.width + 1);
                const upright = brackets(one)[0];
                verify(upright.x >= one.whole.x + one.whole.width);
                fuzzyCompare(upright.y, one.place.y, 1);
                fuzzyCompare(upright.height, one.place.height, 1);
                verify(upright.x + upright.width <= one.width);
                // Its arms reach back towards the piece.
                for (const arm of brackets(one).slice(1, 3))
                    verify(arm.x < upright.x && arm.x >= one.whole.x + one.whole.width - 1);
            }
            const word = findChild(piece, "wet");
            verify(word.visible);
            verify(word.x + word.width <= piece.width + 1);
            verify(!findChild(small, "wet").visible);
        }
        function test_3_wordsBeginWithTheirCapitals() {
            const image = grabImage(root);
            const inked = y => {
                for (let x = 402; x < 430; ++x) {
                    if (image.red(x, y) < 128)
                        return true;
                }
                return false;
            };
            let first = 0;
            while (first < 100 && !inked(first))
                first += 1;
            // To the hinting.
            verify(first <= 3, "capitals begin at " + first);
            compare(words.lineCount, 2);
            fuzzyCompare(words.height, 2 * 0.88 * 100, 1);
        }
        function test_4_aShortWordIsAsLargeAsTheGlassAllows() {
            const found = fitted("Test now", "Knuckle clicks, stays clean?", 466);
            verify(found.fits);
            compare(found.word, Metrics.farFigure);
            compare(found.sentence, Metrics.farText);
        }
        function test_5_aLongActHasTwoLinesBeforeItIsMadeSmaller() {
            compare(fitted("Lay leaf", "", 466).word, Metrics.farFigure);
            const act = fitted("Lay the leaf", "", 520);
            compare(act.word, Metrics.farFigure);
            const longer = fitted("Scatter flake on part 1", "", 466);
            verify(longer.fits);
            verify(longer.word < Metrics.farFigure);
            verify(longer.word >= Metrics.farText);
        }
        function test_6_nothingIsSmallerThanCanBeReadFromAfar() {
            for (const word of ["Test now", "Scatter flake on part 1", "Lay the top strip of the inner band on its mark"]) {
                for (const bottom of [300, 380, 466, 600]) {
                    const found = fitted(word, "The patch still shines and grips a scrap of leaf?", bottom);
                    verify(found.word >= Metrics.farText);
                    verify(found.sentence >= Metrics.farLabel);
                    verify(found.sentenceY > fit.top);
                }
            }
            // What has no room says so, and is found out.
            verify(!fitted("Lay the top strip of the inner band on its mark", "Clicks?", 150).fits);
        }
        function test_7_noWordIsBroken() {
            verify(fit.lines("Unterlegpappenzuschnittfestlegung", Metrics.farFigure, 900, fit.bold) > 9);
            compare(fit.lines("a b c", Metrics.farLabel, 900, fit.plain), 1);
            compare(fit.lines("", Metrics.farLabel, 900, fit.plain), 0);
        }
    }
}
