pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The number in hand with what it is measured on: of a strip, in its dimension above it; of the piece, beside it.
// Below or at the right stands what it is, how many, and what follows.
Item {
    id: root

    required property FigureViewModel figure
    // What is drawn for a number that has no place on the piece.
    property pieceDrawing otherwise
    property string refusal: ""
    property string checks: ""
    property string checksInShort: ""
    property string next: ""
    readonly property bool inLine: figure.hasStrip && figure.level
    readonly property bool tall: height > width * 1.1 || inLine && width < Metrics.mm(140)
    readonly property bool fits: words.fits
    // In a low and narrow room the words take it all.
    readonly property bool low: height < Metrics.mm(30) && width < Metrics.mm(140)
    readonly property bool drawn: (figure.drawn || figure.hasStrip) && !low
    readonly property double gap: Metrics.mm(5)
    readonly property double aside: inLine && !tall ? Math.max(Metrics.mm(52), width * 0.3) : 0
    // The number broken into its line has the room between ring and arrow, or stands after the arrow.
    readonly property bool between: number.implicitWidth + 2 * Metrics.mm(8) <= drawing.to.x - drawing.from.x

    function largest(fits: var): int {
        for (const size of [Metrics.figureLarge, Metrics.figure]) {
            if (fits(size))
                return size;
        }
        return Metrics.figureLeast;
    }

    // A measure that ended with its line would be read as two.
    function unbroken(measure: string): string {
        return measure.replace(/ /g, "\u00a0");
    }

    FigureDrawing {
        id: drawing
        figure: root.figure
        visible: root.drawn
        width: root.inLine ? root.width - root.aside - (root.aside > 0 ? root.gap : 0) : root.tall ? root.width : root.width * 0.5
        // Beside it the number has its least room.
        widest: root.inLine || root.tall ? width : Math.min(root.width * 0.46, root.width - least.implicitWidth - root.gap - Metrics.mm(2))
        height: !visible ? 0 : root.inLine ? Math.min(root.tall ? root.height * 0.55 : root.height, Metrics.figureLarge * 0.96 + Metrics.mm(18)) : root.tall ? root.height * 0.45 : root.height
        room: root.inLine ? number.high + Metrics.mm(3) : Metrics.mm(7)
        line: root.inLine ? number.high * 0.5 : room * 0.5
    }
    PieceView {
        id: other
        visible: !root.drawn && !root.low
        width: root.low ? 0 : root.tall ? root.width : root.width * 0.42
        height: root.tall ? root.height * 0.45 : root.height
        drawing: root.otherwise
    }
    // The line ends where the number stands on it.
    Rectangle {
        visible: root.inLine && root.between
        x: number.x - Metrics.mm(2)
        y: 0
        width: number.width + Metrics.mm(4)
        height: number.high
        color: Theme.cloth
    }
    StepNumber {
        id: number
        readonly property double room: root.inLine ? drawing.width - Metrics.mm(6) : root.width - words.start
        // In its line it leaves the strip below it a height at which its pattern can be seen.
        readonly property int most: root.inLine ? (root.largest(size => size * 0.96 + Metrics.mm(11) <= drawing.height)) : words.level < 4 ? Metrics.figureLarge : words.level < 5 ? Metrics.figure : Metrics.figureLeast

        figure: root.figure
        wholeSize: Math.max(Metrics.figureLeast, Math.min(most, Math.floor(most * room / Math.max(1, widest.implicitWidth))))
        x: root.inLine ? root.between ? (drawing.from.x + drawing.to.x - width) / 2 : Math.min(drawing.to.x + Metrics.mm(4), drawing.width - width) : words.start
        y: (root.inLine ? 0 : words.y) - (height - high) / 2
    }
    StepNumber {
        id: least
        visible: false
        figure: root.figure
        wholeSize: Metrics.figureLeast
    }
    // How wide it would be at the largest.
    StepNumber {
        id: widest
        visible: false
        figure: root.figure
        wholeSize: number.most
        // A smaller one has its tenths as large as the rest.
        tenthsLeast: wholeSize
    }
    FontMetrics {
        id: bold
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: Metrics.label
    }
    FitPane {
        id: words
        // Where there is little room, how many stands before what it is.
        readonly property bool beside: level > 3
        readonly property double below: root.inLine || besideNumber ? 0 : number.high + Metrics.mm(2)

        // A fraction alone is as high as two lines: in a low room its words stand beside it.
        readonly property bool besideNumber: number.fraction && number.alone && !root.inLine && root.height < Metrics.mm(45)
        readonly property double start: root.inLine ? root.tall ? 0 : drawing.width + root.gap : root.tall || root.low ? 0 : (root.drawn ? drawing.end : other.width) + root.gap
        x: start + (besideNumber ? number.width + root.gap : 0)
        y: root.tall ? (root.drawn ? drawing.height : other.height) + Metrics.mm(2) : 0
        width: root.width - x
        height: root.height - y
        spacing: level < 2 ? Metrics.mm(1) : 0
        key: root.figure.label + root.figure.index + root.figure.count + root.checks + root.next + root.refusal
        tightest: 6
        also: [number, widest]

        // The number stands above the words where it is not in its line.
        Item {
            width: 1
            height: words.below
            visible: height > 0
        }
        Words {
            objectName: "refusal"
            width: parent.width
            visible: text !== ""
            text: root.refusal
            color: Theme.worked
            font.bold: true
            font.pixelSize: words.level < 1 ? Metrics.text : Metrics.label
        }
        Flow {
            width: parent.width
            spacing: words.beside ? Metrics.mm(2) : 0

            Words {
                id: count
                objectName: "count"
                visible: text !== ""
                width: words.beside ? Math.ceil(bold.advanceWidth(text)) + 1 : parent.width
                text: root.figure.count
                font.bold: true
                font.pixelSize: words.level < 2 ? Metrics.act : words.beside ? Metrics.label : Metrics.text
                wrapMode: words.beside ? Text.NoWrap : Text.Wrap
                lineHeight: words.beside ? 0.95 : 0.86
            }
            Words {
                objectName: "label"
                width: parent.width - (words.beside && count.visible ? count.width + parent.spacing : 0)
                text: root.figure.total > 1 ? root.figure.label + ", " + root.figure.place : root.figure.label
                font.pixelSize: words.level === 0 || words.level === 2 ? Metrics.text : Metrics.label
            }
        }
        Words {
            objectName: "twin"
            width: parent.width
            visible: text !== "" && words.level < 4
            text: root.figure.twin === "" ? "" : root.unbroken("≈ " + root.figure.twin)
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
        Words {
            objectName: "following"
            width: parent.width
            visible: text !== "" && words.level < 4
            text: root.figure.following === "" ? "" : qsTr("then %1").arg(root.unbroken(root.figure.following))
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
        Words {
            objectName: "checks"
            width: parent.width
            visible: text !== "" && words.level < 6
            text: words.level < 2 ? root.checks : root.checksInShort
            font.pixelSize: Metrics.label
        }
        Words {
            objectName: "next"
            width: parent.width
            visible: text !== "" && (words.level === 0 || words.level === 2)
            text: root.next
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
}
