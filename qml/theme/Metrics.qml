pragma Singleton
import QtQuick

// Every size on the glass: millimetres by the screen's real dots, text by the angle at which it is seen.
QtObject {
    id: root

    property double dotsPerMm: 5.9
    // The tablet's distance from the eyes, and the farthest from which it must still be readable, in mm.
    property double distance: 800
    property double farDistance: 2000
    // At the desk the maker holds the tablet or leans over it.
    property double deskDistance: 420

    // The program sets the family when it creates its window.
    readonly property string family: {
        const program = Qt.application;
        return program.font.family;
    }
    // Behind it stand the letters of everything else, where its package is missing.
    property string artworkFamily: "Noto Serif"
    readonly property TextMetrics capital: TextMetrics {
        font.family: root.family
        font.pixelSize: 1000
        text: "H"
    }
    readonly property double capShare: capital.tightBoundingRect.height / 1000

    // Font size in pixels whose capitals subtend `minutes` of arc at `away` mm (h = 6.283 D a / 21600).
    function letters(minutes: double, away: double): int {
        return Math.ceil(6.283 * away * minutes / 21600 * dotsPerMm / capShare);
    }
    // The size of the words on a key as wide as a corner: large where they stand on at most two lines with air at both
    // sides, as a label where they do not. A lone sign stands larger.
    readonly property double keyMargin: mm(2)
    readonly property FontMetrics keyLetters: FontMetrics {
        font.family: root.family
        font.bold: true
        font.pixelSize: root.text
    }
    function keyText(legend: string): int {
        if (legend.length === 1)
            return title * 1.4;
        const room = corner - 2 * keyMargin;
        let lines = 1;
        let line = "";
        for (const word of legend.split(" ")) {
            const longer = line === "" ? word : line + " " + word;
            const fits = keyLetters.advanceWidth(longer) <= room;
            if (!fits && line !== "")
                lines += 1;
            line = fits ? longer : word;
            if (lines > 2 || keyLetters.advanceWidth(word) > room)
                return label;
        }
        return text;
    }
    function mm(millimetres: double): double {
        return Math.ceil(millimetres * dotsPerMm);
    }

    // At the bench, read at arm's length: what stands beside the act, words, the artwork's name, the act, the figure.
    readonly property int label: letters(16.5, distance)
    readonly property int text: letters(22.9, distance)
    readonly property int name: letters(18.2, distance)
    // The serif letters of artworks' names have lower capitals: as large as labels beside them.
    readonly property double serif: 1.07
    readonly property int labelName: Math.ceil(label * serif)
    readonly property int farName: Math.ceil(farLabel * serif)
    readonly property int title: letters(27, distance)
    readonly property int act: letters(31, distance)
    readonly property int figure: letters(62, distance)
    readonly property int figureLeast: letters(46.5, distance)
    readonly property int figureLarge: letters(82, distance)
    // Of several rows of them at once.
    readonly property int figureRow: letters(50, distance)
    readonly property int farLabel: letters(16.2, farDistance)
    readonly property int farText: letters(22.2, farDistance)
    readonly property int farFigure: letters(45.5, farDistance)
    readonly property int farFigureLarge: letters(70, farDistance)

    // At the desk: the least, what is read and entered, and titles.
    readonly property int deskLabel: letters(20.5, deskDistance)
    readonly property int deskText: letters(24, deskDistance)
    readonly property int deskTitle: letters(33, deskDistance)
    readonly property int deskName: Math.ceil(letters(27, deskDistance) * serif)

    readonly property double deskKey: mm(10)
    readonly property double deskMargin: mm(4)
    readonly property double ledge: mm(1)
    readonly property double deskGap: mm(2)
    readonly property double corner: mm(30)
    readonly property double benchKey: mm(25)
    readonly property double key: mm(20)
    readonly property double gap: mm(6)
    readonly property double edge: mm(2)
    readonly property double sign: mm(16)
    readonly property double hairline: Math.max(1, dotsPerMm / 5)
}
