pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// How a fault is mended; where the maker has to decide, each way as a key with what it means. Steps to be done again
// are back in the order of work.
CornerFrame {
    id: root

    required property BenchViewModel bench
    readonly property bool asks: bench.mend === "" && bench.wayKeys.length > 0

    function done() {
        over();
    }

    doneAction.filled: false

    Column {
        width: parent.width
        spacing: Metrics.mm(5)

        Words {
            width: parent.width
            text: root.asks ? root.bench.considered : qsTr("Mend it")
            font.bold: true
            font.pixelSize: Metrics.title
        }
        Words {
            width: parent.width
            visible: !root.asks
            text: root.bench.mend
        }
        Repeater {
            model: root.asks ? root.bench.wayKeys.length : 0

            Words {
                id: way

                required property int index
                readonly property ScreenAction taking: ScreenAction {
                    name: "way" + way.index
                    text: root.bench.wayKeys[way.index] ?? ""
                    place: ScreenAction.AboveDone
                    onTriggered: root.bench.takeWay(way.index)
                }

                Component.onCompleted: root.offer(taking)
                width: root.width - Metrics.corner - Metrics.mm(8)
                text: "%1: %2".arg(taking.text).arg(root.bench.wayMends[index] ?? "")
            }
        }
        Words {
            width: parent.width
            text: root.asks ? qsTr("Which? Back: nothing is reported.") : qsTr("What has to be done again comes back by itself.")
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
}
