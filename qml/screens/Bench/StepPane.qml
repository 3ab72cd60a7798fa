import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The act: its title, its numbers in the order of use, what is checked before it is
// done, and the next act below.
Item {
    id: root

    required property BenchViewModel bench
    readonly property bool fits: pane.fits
    // Where a step has several numbers, which one this is matters more than what was done last.
    readonly property bool hasChecks: root.bench.kind === BenchViewModel.Step && root.bench.checks.length > 0
    readonly property bool severalNumbers: root.bench.figure.total > 1

    FitPane {
        id: pane
        anchors.fill: parent
        anchors.bottomMargin: next.height
        spacing: level === 0 ? Metrics.mm(2.5) : level < 3 ? Metrics.mm(1) : 0
        key: root.bench.stepId + root.bench.title + root.bench.above + root.bench.detail + root.bench.figure.index + root.bench.refusal

        Words {
            objectName: "above"
            width: parent.width
            visible: text !== "" && (pane.level < 2 || (pane.level < 3 && !root.severalNumbers))
            text: root.bench.above
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
        Words {
            objectName: "refusal"
            width: parent.width
            visible: text !== ""
            text: root.bench.refusal
            color: Theme.worked
            font.bold: true
        }
        Words {
            objectName: "title"
            width: parent.width
            text: root.bench.title
            font.bold: true
            font.pixelSize: pane.level === 0 ? Metrics.title * 1.2 : pane.level === 1 ? Metrics.title : Metrics.text
        }
        Words {
            objectName: "thing"
            width: parent.width
            visible: text !== "" && (pane.level < 2 || root.bench.partsText === "" && !root.severalNumbers)
            text: root.bench.thing
            font.bold: true
            font.pixelSize: pane.level < 2 ? Metrics.text : Metrics.label
        }
        Words {
            objectName: "parts"
            width: parent.width
            visible: text !== "" && pane.level < 2
            text: root.bench.partsText
            font.pixelSize: Metrics.label
        }
        Words {
            objectName: "detail"
            width: parent.width
            visible: text !== ""
            text: root.bench.detail
            font.pixelSize: pane.level < 3 ? Metrics.text : Metrics.label
        }
        Flow {
            width: parent.width
            visible: root.bench.figure.present
            spacing: Metrics.mm(3)

            StepNumber {
                id: number
                figure: root.bench.figure
                wholeSize: pane.level < 2 ? Metrics.figure * 1.25 : Metrics.figure
            }
            Words {
                height: number.height
                verticalAlignment: Text.AlignVCenter
                visible: text !== ""
                text: root.bench.figure.count
                color: Theme.worked
                font.bold: true
                wrapMode: Text.NoWrap
            }
        }
        Words {
            width: parent.width
            visible: root.bench.figure.present
            // From where it is measured matters more than what it is called, where there is no room for both.
            text: pane.level < 3 || root.bench.figure.datum === "" ? root.bench.figure.labelAndDatum : root.bench.figure.datum
            font.pixelSize: pane.level < 2 ? Metrics.text : Metrics.label
        }
        Words {
            objectName: "checks"
            width: parent.width
            visible: root.hasChecks && pane.level < 2
            text: pane.level < 1 ? root.bench.checksText : qsTr("%1 to check: More").arg(root.bench.checks.length)
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
