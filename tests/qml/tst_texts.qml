import QtQuick
import QtTest
import Mountwright.Controls
import Mountwright.Theme

// Texts that are never cut: they wrap, take a tighter level, or go on on another page.
Item {
    id: root
    width: 600
    height: 400
    property int copies: 1

    Words {
        id: words
        width: 100
        text: "a text that is longer than a hundred pixels are wide"
    }
    FitPane {
        id: pane
        width: 300
        height: 120
        tightest: 2

        Repeater {
            model: root.copies

            Words {
                text: "one line"
                font.pixelSize: 40 - 12 * pane.level
            }
        }
    }
    PagedText {
        id: pages
        width: 580
        height: 290
        paragraphs: []
    }
    TextEntry {
        id: entry
        property string told: ""
        property int times: 0
        y: 300
        width: 300
        onAccepted: text => told = text
        onOver: times += 1
    }
    TestCase {
        name: "Texts"
        when: windowShown

        function test_wordsWrapAndAreInTheProgramsLetters() {
            verify(words.lineCount > 1);
            verify(!words.truncated);
            compare(words.font.family, Metrics.family);
        }
        function test_aPaneTakesTheLooseLevelThatFits() {
            root.copies = 1;
            pane.again();
            tryCompare(pane, "level", 0);
            verify(pane.fits);
            root.copies = 3;
            tryVerify(() => pane.level > 0 && pane.fits);
            root.copies = 1;
            pane.again();
            tryCompare(pane, "level", 0);
        }
        function test_aPaneThatCannotFitSaysSo() {
            root.copies = 30;
            tryCompare(pane, "level", pane.tightest);
            verify(!pane.fits);
            root.copies = 1;
            pane.again();
        }
        function test_everyParagraphStandsOnOnePageAndWhole() {
            const all = [];
            for (let i = 0; i < 12; ++i)
                all.push("Paragraph " + i + ", which has a few words in it.");
            pages.paragraphs = all;
            tryVerify(() => pages.pages > 1);
            const met = [];
            for (pages.page = 0; pages.page < pages.pages; ++pages.page) {
                for (let i = 0; i < pages.children.length; ++i) {
                    const one = pages.children[i];
                    if (!one.visible || one.modelData === undefined)
                        continue;
                    met.push(one.modelData);
                    verify(one.y + one.height <= pages.height, one.modelData);
                }
            }
            compare(met, all);
        }
        function test_newParagraphsBeginOnTheFirstPage() {
            pages.paragraphs = ["only one"];
            tryCompare(pages, "pages", 1);
            compare(pages.page, 0);
        }
        function test_aLineIsWrittenAndKeptWithEnter() {
            entry.begin("as it was");
            verify(entry.writing);
            keyClick(Qt.Key_A);
            compare(entry.text, "a");
            keyClick(Qt.Key_Return);
            compare(entry.told, "a");
            verify(entry.times > 0);
            entry.leave();
            verify(!entry.writing);
        }
    }
}
