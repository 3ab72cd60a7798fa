pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// Beside the drawing: the list of the card, or how the act is done, numbered in order; what is checked before it is done;
// and the next act below. What has no room is one page away. Where one cut needs two numbers, both stand in a row.
Item {
    id: root

    required property BenchViewModel bench
    readonly property bool carded: worked && bench.figure.hasCard
    readonly property bool sized: worked && bench.figure.hasSizes
    readonly property bool worked: bench.kind === BenchViewModel.Step
    readonly property bool hasChecks: worked && bench.checks.length > 0
    // An act of several kinds of steps names them in order; one of a single kind says how it is done.
    readonly property var told: !worked ? [] : bench.parts.length > 0 ? bench.parts : bench.sentences
    // An odd one out is left to the next page whole.
    readonly property int toldHere: Math.min(told.length, [9, 9, 3, 2, 1][pane.level])

    CardList {
        objectName: "cardList"
        anchors.fill: parent
        visible: root.carded
        figure: root.bench.figure
        refusal: root.bench.refusal
        below: root.bench.checksText
    }
    SizeRows {
        objectName: "sizeRows"
        anchors.fill: parent
        visible: root.sized
        figure: root.bench.figure
        refusal: root.bench.refusal
        below: root.bench.checksText
    }
    FitPane {
        id: pane
        anchors.fill: parent
        visible: !root.carded && !root.sized
        spacing: level < 2 ? Metrics.mm(1.5) : 0
        key: root.bench.stepId + root.bench.title + root.bench.detail + root.bench.refusal
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
        Repeater {
            model: root.told

            NumberedLine {
                required property string modelData
                required property int index

                visible: index < root.toldHere
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
        Words {
            objectName: "next"
            width: parent.width
            visible: text !== "" && pane.level < 3
            text: root.bench.afterwards
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
}
