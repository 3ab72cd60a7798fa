import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// What is read from two metres: the number in its dimension, from where it is taken, and what it is measured on; the time
// of the next test while the bench waits; or the drawing of the act. The drawing yields first, then the words.
Item {
    id: root

    required property BenchViewModel bench
    readonly property FigureViewModel figure: bench.figure
    readonly property bool numbered: figure.present
    readonly property bool waits: bench.kind === BenchViewModel.Waiting && bench.waitTime !== ""
    required property bool upright
    readonly property double line: Metrics.farLabel * 1.2
    // Above the drawing the dimension runs level, with the number over it; otherwise the number is at its right.
    readonly property bool level: numbered && figure.hasMeasure && figure.level && !upright && toBeIn.advanceWidth(inLine) + 3 * Metrics.mm(8) <= spread
    // How long the dimension will be, and what is written into it.
    readonly property double share: Math.abs(figure.measureTo.x - figure.measureFrom.x) / Math.max(1, figure.measuredSize.width)
    readonly property double spread: width * 0.96 * (share * width < drawing.least ? 0.33 : share)
    readonly property string inLine: figure.datum === "" || figure.hasStrip && figure.total > 1 ? label : figure.datum
    readonly property double leastDrawing: Metrics.mm(7)
    readonly property bool drawn: numbered && (figure.drawn || figure.hasStrip) && (level ? height - number.high - line >= leastDrawing : upright ? height - number.high - 2 * line >= Metrics.mm(30) : width - number.width >= Metrics.mm(50))
    readonly property string label: figure.hasCard ? figure.what : figure.label
    readonly property string told: figure.datum === "" ? label : label === "" ? figure.datum : label + ", " + figure.datum

    StepNumber {
        id: number
        readonly property double room: root.level ? root.width - Metrics.mm(6) : root.width
        visible: root.numbered
        x: root.level ? Metrics.mm(3) : root.drawn && !root.upright ? drawing.x + drawing.width + Metrics.mm(5) : 0
        figure: root.figure
        // Of a fraction alone the upper digits reach higher than those of a number.
        y: (number.high - height) / 2 + (fraction && alone ? Metrics.mm(3) : 0)
        wholeSize: {
            for (const size of [Metrics.farFigureLarge, (Metrics.farFigureLarge + Metrics.farFigure) / 2]) {
                if (widest.implicitWidth * size <= room * Metrics.farFigure && size * (fraction && alone ? 1.66 : fraction ? 1.22 : 0.96) + 2 * root.line + Metrics.mm(4) <= root.height)
                    return size;
            }
            return Metrics.farFigure;
        }
        unitSize: Metrics.farText
        unitBeside: !root.upright
        tenthsLeast: Metrics.farFigure
        neighbours: Metrics.farLabel
    }
    FontMetrics {
        id: toBeIn
        font.family: Metrics.family
        font.pixelSize: Metrics.farLabel
    }
    StepNumber {
        id: widest
        visible: false
        figure: root.figure
        wholeSize: Metrics.farFigure
        unitSize: Metrics.farText
        unitBeside: !root.upright
        tenthsLeast: Metrics.farFigure
    }
    FigureDrawing {
        id: drawing
        visible: root.drawn
        figure: root.figure
        y: root.upright ? root.height - height : 0
        width: root.level || root.upright ? root.width : Math.min(root.width - widest.width - Metrics.mm(5), root.width * 0.36)
        height: root.level ? root.height : root.upright ? root.height - said.y - said.height - Metrics.mm(2) : root.height
        room: root.level ? number.high + root.line : Metrics.mm(14)
        line: root.level ? number.high + root.line / 2 : room / 2
        cropped: root.level && !root.figure.hasStrip
        cap: Metrics.farLabel * Metrics.capShare
    }
    // In the line of the dimension, which ends where it stands; below the number otherwise.
    Words {
        id: said
        objectName: "from"
        readonly property bool inLine: root.level && root.drawn
        visible: root.numbered && text !== ""
        // Beside a fraction, which is as high as two lines.
        readonly property bool beside: number.fraction && number.alone && !root.level && !root.upright
        x: inLine ? drawing.from.x + Metrics.mm(8) : number.x + (beside ? number.width + Metrics.mm(6) : 0)
        y: beside ? Metrics.mm(4) : number.high + (root.upright ? root.line + Metrics.mm(number.fraction ? number.alone ? 10 : 3 : 0) : 0)
        width: inLine ? Math.ceil(toBeIn.advanceWidth(root.inLine)) + 1 : root.width - x
        // From where is said before what it is called: the act has named that.
        readonly property int lines: Math.floor((root.height - y + Metrics.mm(1.5)) / (Metrics.farLabel * 1.08))
        readonly property string first: root.figure.datum === "" ? root.label : root.figure.datum
        text: {
            if (inLine)
                return root.inLine;
            for (const said of [root.told, first, first.split(",")[0]]) {
                if (toBeIn.advanceWidth(said) <= (lines > 1 ? lines - 0.35 : lines) * width)
                    return said;
            }
            return root.label;
        }
        font.pixelSize: Metrics.farLabel
        lineHeight: 0.86

        Rectangle {
            z: -1
            // As high as the line alone, so that it hides nothing of the drawing below it.
            x: -Metrics.mm(2)
            y: parent.height * 0.2
            width: parent.width + 2 * Metrics.mm(2)
            height: parent.height * 0.6
            visible: said.inLine
            color: Theme.cloth
        }
    }
    Words {
        objectName: "figure"
        visible: root.numbered && root.upright
        y: number.high + Metrics.mm(number.fraction ? number.alone ? 9 : 2 : 0)
        text: root.figure.unit
        color: Theme.worked
        font.pixelSize: Metrics.farLabel
        font.bold: true
    }
    // While the bench waits: when it is tested, and by what.
    Column {
        visible: root.waits && !root.numbered
        width: root.width

        Flow {
            width: parent.width
            spacing: Metrics.mm(5)

            Words {
                objectName: "waitVerb"
                text: root.bench.waitVerb
                color: Theme.calm
                font.bold: true
                font.pixelSize: Metrics.farText
                wrapMode: Text.NoWrap
            }
            Words {
                objectName: "waitTime"
                text: root.bench.waitTime
                color: Theme.calm
                font.bold: true
                font.pixelSize: Metrics.farFigure
                wrapMode: Text.NoWrap
                lineHeight: 0.9
            }
        }
        Words {
            objectName: "waitTest"
            width: parent.width
            text: root.bench.waitTest
            font.pixelSize: Metrics.farLabel
            lineHeight: 0.86
        }
    }
    PieceView {
        objectName: "act"
        visible: !root.numbered && !root.waits && height >= Metrics.mm(12)
        anchors.fill: parent
        drawing: root.bench.hasAct ? root.bench.act : root.bench.drawing
    }
}
