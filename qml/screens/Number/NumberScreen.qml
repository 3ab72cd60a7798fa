import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One figure alone, to be read from two metres; the pedal goes through the step's figures in the order of use.
ScreenBase {
    id: root

    required property FigureViewModel figure
    readonly property double distance: Metrics.farDistance
    readonly property bool upright: height > width

    function done() {
        stepDone();
    }
    // The bench shows a step's first number beside its title.
    function closed() {
        figure.begin();
    }

    doneAction.place: ScreenAction.Corner
    doneAction.filled: true
    backAction.place: ScreenAction.Corner
    // The pedals turn the figures; before the first and after the last they leave the screen.
    actions: [
        ScreenAction {
            name: "pedalBack"
            text: qsTr("The number before")
            place: ScreenAction.NoKey
            by: ScreenAction.Back
            onTriggered: {
                if (!root.figure.back())
                    root.back();
            }
        },
        ScreenAction {
            name: "pedalForward"
            text: qsTr("The next number")
            place: ScreenAction.NoKey
            by: ScreenAction.Forward
            onTriggered: {
                if (!root.figure.forward())
                    root.over();
            }
        }
    ]

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
                tenthsLeast: Metrics.farFigure
                // On an upright tablet a figure of four digits takes the whole width.
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
        x: Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        offers: root.backAction
    }
    // The key is between Back and Step; on an upright tablet there is no room, so it is above them.
    Row {
        id: turning
        x: root.upright ? Metrics.edge : back.x + back.width + Metrics.gap
        y: root.upright ? back.y - height - Metrics.gap : back.y + (back.height - height) / 2
        height: Metrics.benchKey
        spacing: Metrics.gap

        TouchKey {
            width: Metrics.benchKey
            height: Metrics.benchKey
            legendSize: Metrics.title
            offers: ScreenAction {
                name: "previous"
                text: "‹"
                called: qsTr("The number before")
                enabled: root.figure.total > 1
                onTriggered: root.figure.back()
            }
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
            // The key is as wide as the next number needs, but never reaches into the gap before the key beside it.
            width: Math.min(Metrics.mm(38), (root.upright ? root.width - Metrics.edge : step.x - Metrics.gap) - parent.x - x)
            height: Metrics.benchKey
            legendSize: Metrics.title
            offers: ScreenAction {
                name: "following"
                text: "›"
                called: qsTr("The next number")
                hint: root.figure.following
                enabled: root.figure.total > 1
                onTriggered: root.figure.forward()
            }
        }
    }
    TouchKey {
        id: step
        anchors.right: done.left
        anchors.rightMargin: Metrics.gap
        anchors.verticalCenter: done.verticalCenter
        width: Metrics.benchKey
        height: Metrics.benchKey
        offers: ScreenAction {
            name: "step"
            text: qsTr("Step")
            onTriggered: root.over()
        }
    }
    TouchKey {
        id: done
        x: root.width - width - Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        offers: root.doneAction
    }
}
