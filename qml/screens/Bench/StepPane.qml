pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// Beside the drawing: the list of the card; the number in hand with how many and what it is, or how the act is done,
// numbered in order; what is checked before it is done; and the next act below. What has no room is one page away. Where
// one cut needs two numbers, both stand in a row.
Item {
    id: root

    required property BenchViewModel bench
    readonly property bool carded: worked && bench.figure.hasCard
    readonly property bool sized: worked && bench.figure.hasSizes
    readonly property bool worked: bench.kind === BenchViewModel.Step
    readonly property bool hasChecks: worked && bench.checks.length > 0
    readonly property double besideWidth: pane.width - number.width - Metrics.mm(4) - (bench.figure.count !== "" ? Metrics.mm(26) : 0)
    readonly property string labelled: bench.figure.total > 1 ? bench.figure.label + ", " + bench.figure.place : bench.figure.label
    // An act of several kinds of steps names them in order; one of a single kind says how it is done.
    readonly property var told: !worked || bench.figure.present ? [] : bench.parts.length > 0 ? bench.parts : bench.sentences

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
                wholeSize: pane.level < 1 ? Metrics.figureLarge : pane.level < 3 ? Metrics.figure : Metrics.figureLeast
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
            // Where there is little height it stands beside its number.
            Words {
                objectName: "besideLabel"
                readonly property bool fitsBeside: root.besideWidth >= Metrics.mm(36)
                height: fitsBeside ? Math.max(number.height, implicitHeight) : implicitHeight
                width: fitsBeside ? root.besideWidth : pane.width
                verticalAlignment: Text.AlignVCenter
                visible: pane.level > 1
                text: root.labelled
                font.pixelSize: Metrics.label
            }
        }
        Words {
            objectName: "label"
            width: parent.width
            visible: root.bench.figure.present && pane.level < 2
            text: root.labelled
            font.pixelSize: pane.level < 1 ? Metrics.text : Metrics.label
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
        Words {
            objectName: "next"
            width: parent.width
            visible: text !== "" && pane.level < 3
            text: {
                const parts = [root.bench.progress, root.bench.hands, root.bench.next].filter(part => part !== "");
                return parts.join(" · ");
            }
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
}
