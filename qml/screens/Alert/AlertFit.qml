import QtQuick
import Mountwright.Theme

// How large the words of an alert can stand: the word to be read first as large as it has room on two lines, then the
// sentence, then what else there is to say. No letters are smaller than what can be read from two metres, and no word is
// broken.
QtObject {
    id: root

    required property string word
    required property string sentence
    // Further lines, and the same said more shortly.
    required property var more
    required property var shortly
    // Where the words begin, how far they reach beside the keys at the right and above them, and where these begin.
    required property double left
    required property double top
    required property double bottom
    required property double right
    required property double narrowRight
    required property double keysTop

    readonly property double pitch: 0.88
    // What hangs below the line needs air before the sentence; capitals and short letters need less.
    readonly property double below: /[gjpqy,;]/.test(word) ? 0.2 : -0.05
    readonly property double gap: Metrics.mm(3.4)
    readonly property list<int> wordSizes: [Metrics.farFigure, Metrics.figureLarge, Metrics.farText]
    readonly property list<int> sentenceSizes: [Metrics.farText, Metrics.farLabel]
    readonly property var chosen: choose()

    readonly property FontMetrics bold: FontMetrics {
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: 100
    }
    readonly property FontMetrics plain: FontMetrics {
        font.family: Metrics.family
        font.pixelSize: 100
    }

    // Of a hundred pixels' letters, set as close as FarWords sets them. They stand on whole pixels: a hair more than they
    // measure. `letters` are FontMetrics; the linter of Qt 6.4 does not live through a second function that says so.
    function widthOf(text: string, letters: var): double {
        return 1.004 * letters.advanceWidth(text) - 1.2 * text.length;
    }
    // The lines a text takes; nought for none, and more than any screen has where a word of it is too wide.
    function lines(text: string, size: int, width: double, letters: FontMetrics): int {
        if (text === "")
            return 0;
        const room = width / size * 100;
        let count = 1;
        let line = "";
        for (const one of text.split(" ")) {
            if (widthOf(one, letters) > room)
                return 99;
            const longer = line === "" ? one : line + " " + one;
            if (line !== "" && widthOf(longer, letters) > room) {
                count += 1;
                line = one;
            } else {
                line = longer;
            }
        }
        return count;
    }
    // `most`: lines of the word. Null where it does not fit and has to.
    function laidOut(wordSize: int, most: int, sentenceSize: int, said: var, must: bool): var {
        const wholeLines = lines(word, wordSize, right - left, bold);
        const whole = top + wholeLines * pitch * wordSize <= keysTop;
        const wordRight = whole ? right : narrowRight;
        const wordLines = whole ? wholeLines : lines(word, wordSize, wordRight - left, bold);
        const y = top + (Math.min(wordLines, 9) * pitch + below) * wordSize;
        let end = y + lines(sentence, sentenceSize, narrowRight - left, plain) * pitch * sentenceSize;
        for (let i = 0; i < said.length; ++i)
            end += gap + lines(said[i], Metrics.farLabel, narrowRight - left, plain) * pitch * Metrics.farLabel;
        const fits = wordLines <= most && end <= bottom;
        return must && !fits ? null : {
            "word": wordSize,
            "wordWidth": wordRight - left,
            "sentence": sentenceSize,
            "sentenceY": y,
            "said": said,
            "fits": fits
        };
    }
    function choose(): var {
        for (const size of wordSizes) {
            for (const sentenceSize of sentenceSizes) {
                for (const said of [more, shortly]) {
                    const found = laidOut(size, size === Metrics.farText ? 3 : 2, sentenceSize, said, true);
                    if (found !== null)
                        return found;
                }
            }
        }
        return laidOut(Metrics.farText, 3, Metrics.farLabel, shortly, false);
    }
}
