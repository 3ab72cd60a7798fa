pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// What an act cuts to a width and a height, a row for each thing: what it is, how many, and both numbers in their
// dimensions. The one in hand has a bar and the colour of what is worked.
Item {
    id: root

    required property FigureViewModel figure
    property string refusal: ""
    property string below: ""
    readonly property var sizes: figure.sizes
    readonly property double room: height - (refused.visible ? refused.height : 0)
    readonly property double gap: Metrics.mm(4)
    readonly property double indent: Metrics.mm(2)
    readonly property int numberSize: sizes.length === 1 && !low ? Metrics.figure : Metrics.figureRow
    readonly property bool low: room < Metrics.mm(34)
    // Room for a number of either direction, for its arrow and for what it is of.
    readonly property double numberWidth: {
        let widest = 0;
        for (const size of sizes) {
            for (const one of [size.across, size.down])
                widest = Math.max(widest, reach(one));
        }
        return widest;
    }
    readonly property double arrowWidth: Metrics.mm(4.5)
    readonly property double boardWidth: Metrics.mm(12)
    readonly property double numbersWidth: 2 * numberWidth + arrowWidth + gap
    readonly property bool stacked: width - indent - numbersWidth - boardWidth - 2 * gap < Metrics.mm(28)
    // On an upright tablet one number stands below the other.
    readonly property bool narrow: indent + numbersWidth > width
    readonly property double rowHeight: figureHeight * (narrow ? 2 : 1) + (stacked ? labelHeight : 0)
    readonly property bool fractions: {
        for (const size of sizes) {
            if (size.across.denominator !== "" || size.down.denominator !== "")
                return true;
        }
        return false;
    }
    // Its capitals, what a fraction has above and below them, and the arrow; the air its letters have below and above them
    // may be a neighbour's in part alone.
    readonly property double air: 0.27 * Metrics.label
    readonly property double above: Math.max((fractions ? 0.16 : 0.06) * numberSize, stacked ? 0.23 * numberSize - air : 0)
    readonly property double figureHeight: Math.ceil(above + Math.max(numberSize * (fractions ? 0.92 : 0.76) + Metrics.mm(3.4), 1.116 * numberSize - air))
    readonly property int unitSize: sizes.length === 1 ? Metrics.text : Metrics.label
    readonly property double labelHeight: Math.ceil(Metrics.label * 1.3)
    readonly property int rowsFit: Math.max(1, Math.floor((room + 0.5) / rowHeight))
    readonly property int withLine: Math.max(1, Math.floor((room + 0.5 - labelHeight) / rowHeight))
    // A high row has room for the count of those left out below its own words.
    readonly property bool highRow: !stacked && rowHeight >= 3 * Metrics.label * 1.15
    readonly property int shown: rowsFit >= sizes.length ? sizes.length : highRow ? rowsFit : withLine
    readonly property int hidden: sizes.length - first - shown
    readonly property bool countedBeside: hidden > 0 && shown > withLine
    // As many as have room, the one in hand among them.
    readonly property int first: Math.max(0, Math.min(figure.stop - shown + 2, figure.stop, sizes.length - shown))
    readonly property bool fits: list.height <= room + 0.5

    function reach(number: var): double {
        const stack = number.denominator === "" ? 0 : Math.max(number.numerator.length, number.denominator.length) * 0.36 + 0.12;
        return Math.ceil(letters.advanceWidth(number.whole) * numberSize / Metrics.figure + (stack + 0.12) * numberSize + units.advanceWidth(number.unit) * unitSize / Metrics.text) + 2;
    }

    Words {
        id: refused
        objectName: "refusal"
        x: root.indent
        width: root.width - x
        visible: text !== ""
        text: root.refusal
        color: Theme.worked
        font.bold: true
        font.pixelSize: Metrics.label
    }
    Column {
        id: list
        y: refused.visible ? refused.height : 0
        width: root.width

        Repeater {
            model: root.sizes.slice(root.first, root.first + root.shown)

            Item {
                id: row
                required property var modelData
                required property int index
                readonly property color ink: modelData.now ? Theme.worked : Theme.ink
                readonly property double numbersX: root.narrow ? root.indent + root.arrowWidth : root.stacked ? board.x + board.width + Metrics.mm(3) : width - root.numbersWidth
                readonly property double downX: root.narrow ? numbersX : numbersX + root.numberWidth + root.gap + root.arrowWidth
                readonly property double downY: under + (root.narrow ? root.figureHeight : 0)
                readonly property double under: root.stacked ? root.labelHeight : 0

                objectName: modelData.now ? "rowInHand" : "row"
                width: root.width
                height: root.rowHeight

                Rectangle {
                    visible: row.index > 0
                    x: root.indent
                    width: parent.width - x
                    height: Math.max(1, Metrics.mm(0.25))
                    color: Theme.hair
                }
                Rectangle {
                    objectName: "bar"
                    visible: row.modelData.now
                    x: root.indent - root.gap
                    y: Metrics.mm(0.6)
                    width: Metrics.mm(1.4)
                    height: parent.height - 2 * y
                    color: Theme.ink
                }
                // It is known by its colour, too.
                Rectangle {
                    id: board
                    x: root.indent
                    y: root.stacked ? Metrics.mm(0.8) : (parent.height - height) / 2
                    width: root.stacked ? Metrics.mm(7) : root.boardWidth
                    height: root.stacked ? root.labelHeight - Metrics.mm(2) : Metrics.mm(10)
                    color: Theme.lamp ? Qt.darker(row.modelData.colour, 1.28) : row.modelData.colour
                    border.color: row.modelData.now ? Theme.ink : Theme.pencil
                    border.width: row.modelData.now ? Metrics.mm(0.6) : Math.max(1, Metrics.mm(0.2))
                }
                Column {
                    x: board.x + board.width + Metrics.mm(3)
                    y: root.stacked ? 0 : (parent.height - height) / 2
                    width: (root.stacked ? parent.width : row.numbersX - root.gap) - x

                    Words {
                        objectName: "rowName"
                        width: parent.width
                        text: root.stacked ? row.modelData.name + ", " + row.modelData.count : row.modelData.name
                        font.bold: row.modelData.now
                        font.pixelSize: Metrics.label
                        lineHeight: 0.9
                    }
                    Words {
                        visible: !root.stacked
                        text: row.modelData.count
                        color: Theme.quiet
                        font.pixelSize: Metrics.label
                        wrapMode: Text.NoWrap
                        lineHeight: 0.9
                    }
                    Words {
                        objectName: "more"
                        visible: root.countedBeside && row.index === root.shown - 1
                        text: qsTr("%1 more").arg(root.hidden)
                        color: Theme.quiet
                        font.pixelSize: Metrics.label
                        wrapMode: Text.NoWrap
                        lineHeight: 0.9
                    }
                }
                StackedNumber {
                    id: across
                    objectName: "across"
                    x: row.numbersX
                    y: row.under + root.above - 0.23 * root.numberSize
                    unitSize: root.unitSize
                    whole: row.modelData.across.whole
                    numerator: row.modelData.across.numerator
                    denominator: row.modelData.across.denominator
                    unit: row.modelData.across.unit
                    wholeSize: root.numberSize
                    ink: row.ink
                }
                DimensionLine {
                    x: row.numbersX
                    y: row.under + root.figureHeight - height - Metrics.mm(0.5)
                    width: root.numberWidth - Metrics.mm(1)
                    height: implicitHeight
                }
                DimensionLine {
                    down: true
                    x: row.downX - root.arrowWidth - Metrics.mm(0.5)
                    y: row.downY + root.above
                    width: implicitWidth
                    height: root.figureHeight - root.above - Metrics.mm(3.6)
                }
                StackedNumber {
                    objectName: "down"
                    x: row.downX
                    y: row.downY + root.above - 0.23 * root.numberSize
                    unitSize: root.unitSize
                    whole: row.modelData.down.whole
                    numerator: row.modelData.down.numerator
                    denominator: row.modelData.down.denominator
                    unit: row.modelData.down.unit
                    wholeSize: root.numberSize
                    ink: row.ink
                }
            }
        }
        Words {
            objectName: "more"
            anchors.right: parent.right
            height: root.labelHeight
            visible: root.hidden > 0 && !root.countedBeside
            text: qsTr("%1 more").arg(root.hidden)
            color: Theme.quiet
            font.pixelSize: Metrics.label
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
    }
    Words {
        objectName: "below"
        x: root.indent
        y: root.height - height
        width: root.width - x
        visible: text !== "" && list.y + list.height + Metrics.mm(2) <= y
        text: root.below
        font.pixelSize: Metrics.label
    }
    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: Metrics.figure
    }
    FontMetrics {
        id: units
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: Metrics.text
    }
}
