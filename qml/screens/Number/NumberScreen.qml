import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One figure alone, for two metres; the pedal goes through the step's figures in the order of use.
ScreenBase {
    id: root

    required property FigureViewModel figure
    readonly property double distance: Metrics.farDistance
    readonly property bool upright: height > width

    function done() {
        stepDone();
    }
    function pedalForward() {
        if (!figure.forward())
            over();
    }
    function pedalBack() {
        if (!figure.back())
            root.back();
    }
    // Beside a step's title stands its first number.
    function closed() {
        figure.begin();
    }

    FitPane {
        id: pane
        x: Metrics.mm(4)
        y: Metrics.mm(2)
        width: root.width - 2 * x
        height: Math.min(back.y, turning.y) - y - Metrics.mm(2)
        spacing: 0
        tightest: 2
        key: root.figure.label + root.figure.datum + root.figure.index

        Words {
            width: parent.width
            text: root.figure.label
            color: Theme.quiet
            font.pixelSize: Metrics.farLabel
            lineHeight: 0.85
        }
        Item {
            width: parent.width
            height: number.height

            StepNumber {
                id: number
                figure: root.figure
                wholeSize: pane.level === 0 ? Metrics.farFigure * 1.15 : Metrics.farFigure
                unitSize: Metrics.farText
                // Upright a figure of four digits takes the whole width.
                unitBeside: !root.upright
            }
            PieceView {
                visible: width > Metrics.mm(25)
                x: number.width + Metrics.mm(6)
                width: parent.width - x
                height: parent.height
                drawing: root.figure.drawing
            }
        }
        Words {
            readonly property string end: root.figure.twin === "" ? root.figure.origin : root.figure.twin
            readonly property string middle: (root.upright && root.figure.unit !== "" ? root.figure.unit + " · " : "") + root.figure.datum + (root.figure.datum !== "" && end !== "" ? " · " : "") + end

            width: parent.width
            text: root.figure.count + (root.figure.count !== "" && middle !== "" ? " · " : "") + middle
            font.pixelSize: pane.level === 0 ? Metrics.farText : Metrics.farLabel
            lineHeight: 0.85
        }
    }
    TouchKey {
        id: back
        objectName: "back"
        x: Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        legend: qsTr("Back")
        onActed: root.back()
    }
    // Between Back and Step; upright there is no room, and it stands above them.
    Row {
        id: turning
        x: root.upright ? Metrics.edge : back.x + back.width + Metrics.gap
        y: root.upright ? back.y - height - Metrics.gap : back.y + (back.height - height) / 2
        height: Metrics.benchKey
        spacing: Metrics.gap

        TouchKey {
            objectName: "previous"
            visible: root.figure.total > 1
            width: Metrics.benchKey
            height: Metrics.benchKey
            legend: "‹"
            legendSize: Metrics.title
            onActed: root.figure.back()
        }
        Words {
            visible: root.figure.total > 1
            anchors.verticalCenter: parent.verticalCenter
            text: root.figure.shortPlace
            font.bold: true
            font.pixelSize: Metrics.farLabel
            wrapMode: Text.NoWrap
        }
        TouchKey {
            objectName: "following"
            visible: root.figure.total > 1
            // As wide as the next number likes, but never into the gap before the key beside it.
            width: Math.min(Metrics.mm(38), (root.upright ? root.width - Metrics.edge : step.x - Metrics.gap) - parent.x - x)
            height: Metrics.benchKey
            legend: "›"
            legendSize: Metrics.title
            hint: root.figure.following
            onActed: root.figure.forward()
        }
    }
    TouchKey {
        id: step
        objectName: "step"
        anchors.right: done.left
        anchors.rightMargin: Metrics.gap
        anchors.verticalCenter: done.verticalCenter
        width: Metrics.benchKey
        height: Metrics.benchKey
        legend: qsTr("Step")
        onActed: root.over()
    }
    TouchKey {
        id: done
        objectName: "done"
        x: root.width - width - Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        legend: qsTr("Done")
        filled: true
        onActed: root.done()
    }
}
