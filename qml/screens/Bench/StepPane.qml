pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// Beside the drawing: the number in hand with how many and what it is, or how the act is done, numbered in order; what is
// checked before it is done; and the next act below. What has no room is one page away.
Item {
    id: root

    required property BenchViewModel bench
    readonly property bool fits: pane.fits
    readonly property bool worked: bench.kind === BenchViewModel.Step
    readonly property bool hasChecks: worked && bench.checks.length > 0
    // An act of several kinds of steps names them in order; one of a single kind says how it is done.
    readonly property var told: !worked || bench.figure.present ? [] : bench.parts.length > 0 ? bench.parts : bench.sentences

    FitPane {
        id: pane
        anchors.fill: parent
        anchors.bottomMargin: next.height
        spacing: level < 2 ? Metrics.mm(1.5) : 0
        key: root.bench.stepId + root.bench.title + root.bench.detail + root.bench.figure.index + root.bench.refusal
        tightest: 4

        Words {
            objectName: "refusal"
            width: parent.width
            visible: text !== ""
            text: root.bench.refusal
            color: Theme.worked
            font.bold: true
            font.pixelSize: pane.level < 2 ? Metrics.text : Metrics.label
        }
        Words {
            objectName: "detail"
            width: parent.width
            visible: text !== ""
            text: root.bench.detail
            font.pixelSize: pane.level < 2 ? Metrics.text : Metrics.label
        }
        Flow {
            width: parent.width
            visible: root.bench.figure.present
            spacing: Metrics.mm(3)

            StepNumber {
                id: number
                figure: root.bench.figure
                wholeSize: pane.level < 1 ? Metrics.figureLarge : Metrics.figure
            }
            Words {
                objectName: "count"
                height: number.height
                verticalAlignment: Text.AlignVCenter
                visible: text !== ""
                text: root.bench.figure.count
                font.bold: true
                wrapMode: Text.NoWrap
            }
        }
        Words {
            objectName: "label"
            width: parent.width
            visible: root.bench.figure.present
            text: root.bench.figure.total > 1 ? root.bench.figure.label + ", " + root.bench.figure.place : root.bench.figure.label
            font.pixelSize: pane.level < 2 ? Metrics.text : Metrics.label
        }
        Words {
            objectName: "following"
            width: parent.width
            visible: text !== "" && pane.level < 3
            text: root.bench.figure.following === "" ? "" : qsTr("then %1").arg(root.bench.figure.following)
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
        Repeater {
            model: root.told

            NumberedLine {
                required property string modelData
                required property int index

                // An odd one out is left to the next page whole.
                visible: index < [9, 9, 3, 2, 1][pane.level]
                width: pane.width
                number: index + 1
                text: modelData
                textSize: pane.level < 1 ? Metrics.text : Metrics.label
            }
        }
        Words {
            objectName: "checks"
            width: parent.width
            visible: root.hasChecks && pane.level < 3
            text: pane.level < 2 ? root.bench.checksText : qsTr("%1 to check: More").arg(root.bench.checks.length)
            font.pixelSize: Metrics.label
        }
    }
    Words {
        id: next
        objectName: "next"
        anchors.bottom: root.bottom
        width: root.width
        text: root.bench.progress + (root.bench.progress !== "" && root.bench.next !== "" ? " · " : "") + root.bench.next
        color: Theme.quiet
        font.pixelSize: Metrics.label
    }
}
