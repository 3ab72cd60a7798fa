import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The act, the number and the next event, to be read from two metres. Any touch goes back to the bench.
ScreenBase {
    id: root

    required property BenchViewModel bench
    required property ShelfModel shelf
    readonly property double distance: Metrics.farDistance
    readonly property bool upright: height > width
    readonly property bool beside: pane.level >= 4 && (!upright || number.alone) && bench.figure.present && bench.figure.datum !== ""
    readonly property string side: bench.figure.present ? bench.lies.split(" · ")[0] : ""

    idle: true

    function done() {
        over();
    }

    FitPane {
        id: pane
        x: Metrics.mm(4)
        y: Metrics.mm(2)
        width: root.width - 2 * x
        height: rule.y - y
        spacing: level < 4 ? Metrics.mm(1) : 0
        key: root.bench.title + root.bench.figure.index + next.text
        tightest: 4

        // This names the piece, and its board or strip.
        Words {
            objectName: "pieceName"
            width: parent.width
            visible: text !== ""
            // "back up" says from which side the number is meant: with it the piece's name has no room.
            text: {
                const piece = root.bench.figure.present && pane.level > 0 ? "" : root.bench.shortPiece;
                const lines = [piece, root.bench.thing, root.side].filter(part => part !== "");
                return lines.join(" · ");
            }
            color: Theme.quiet
            font.pixelSize: Metrics.farLabel
            lineHeight: 0.85
        }
        Words {
            objectName: "title"
            width: parent.width
            text: root.bench.title
            font.bold: true
            font.pixelSize: pane.level === 0 ? Metrics.farText * 1.2 : pane.level < 2 ? Metrics.farText : Metrics.farLabel
            lineHeight: 0.85
        }
        Flow {
            width: parent.width
            visible: root.bench.figure.present
            spacing: Metrics.mm(5)

            StepNumber {
                id: number
                figure: root.bench.figure
                wholeSize: Metrics.farFigure
                unitSize: Metrics.farText
                // Two rows of digits leave no more.
                aloneShare: 0.62
                // On an upright tablet a figure of four digits takes the whole width.
                unitBeside: !root.upright
            }
            Words {
                id: count
                objectName: "count"
                height: number.height
                verticalAlignment: Text.AlignVCenter
                visible: text !== "" && !root.upright
                text: root.bench.figure.count
                color: Theme.worked
                font.pixelSize: Metrics.farLabel
                wrapMode: Text.NoWrap
            }
            // Where there is no height for it below, from where it is taken stands beside the number.
            Words {
                objectName: "label"
                width: pane.width - number.width - parent.spacing - (count.visible ? count.width + parent.spacing : 0)
                height: Math.max(number.height, implicitHeight)
                verticalAlignment: Text.AlignVCenter
                visible: root.beside
                text: root.bench.figure.datum
                font.pixelSize: Metrics.farLabel
                lineHeight: 0.85
            }
        }
        Words {
            objectName: "count"
            width: parent.width
            visible: root.upright && root.bench.figure.present
            text: (root.bench.figure.unit + " " + root.bench.figure.count).trim()
            color: Theme.worked
            font.pixelSize: Metrics.farLabel
            font.bold: true
        }
        // This shows what the figure measures, and from where; the latter as far as there is room for one.
        Words {
            objectName: "label"
            width: parent.width
            visible: root.bench.figure.present && !root.beside
            text: pane.level < 3 || root.bench.figure.datum === "" ? root.bench.figure.labelAndDatum : root.bench.figure.datum
            font.pixelSize: Metrics.farLabel
            lineHeight: 0.85
        }
    }
    Rectangle {
        id: rule
        x: Metrics.mm(4)
        y: next.y - Metrics.mm(1)
        width: root.width - 2 * x
        height: Metrics.hairline
        color: Theme.hair
    }
    Words {
        id: next
        objectName: "next"
        x: Metrics.mm(4)
        y: root.height - height - Metrics.mm(1)
        width: root.width - 2 * x
        text: {
            const lines = [root.shelf.nextLine, root.shelf.unknown].filter(line => line !== "");
            return lines.length === 0 ? qsTr("Nothing is drying.") : lines.join("\n");
        }
        color: root.shelf.unknown !== "" ? Theme.worked : root.shelf.nextLine !== "" ? Theme.calm : Theme.quiet
        font.pixelSize: Metrics.farLabel
        font.bold: root.shelf.unknown !== "" || root.shelf.nextLine !== ""
        lineHeight: 0.85
    }
    MouseArea {
        property bool counts: false

        anchors.fill: parent
        onPressed: counts = !Touch.guarded()
        onReleased: {
            if (counts)
                root.doneAction.trigger(root);
        }
    }
}
