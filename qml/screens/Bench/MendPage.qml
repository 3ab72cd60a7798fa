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
    required property WatchViewModel watch
    readonly property bool asks: bench.mend === "" && bench.wayKeys.length > 0
    readonly property double wayWidth: upright ? width - 2 * Metrics.mm(4) : (wordsRight - Metrics.mm(4) - (bench.wayKeys.length - 1) * Metrics.gap) / Math.max(1, bench.wayKeys.length)

    function done() {
        over();
    }

    doneAction.filled: false

    PageHead {
        id: head
        width: root.wordsRight - parent.x
        watch: root.watch
        piece: root.bench.shortPiece
        note: root.asks ? qsTr("nothing is reported yet") : qsTr("reported")
        title: root.asks ? root.bench.considered : qsTr("Mend it")
    }
    Rectangle {
        id: plate
        objectName: "plate"
        x: -parent.x
        y: head.height + Metrics.mm(1.4)
        width: root.upright ? root.width : parent.x + parent.width + Metrics.mm(2)
        height: root.shelfTop - y
        color: Theme.cloth
    }
    Column {
        visible: !root.asks
        y: plate.y + Metrics.mm(4)
        width: parent.width - Metrics.mm(2)
        spacing: Metrics.mm(4)

        Words {
            objectName: "mend"
            width: parent.width
            text: root.bench.mend
            font.pixelSize: Metrics.title
        }
        Words {
            width: parent.width
            text: qsTr("What has to be done again comes back by itself.")
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
    Flow {
        visible: root.asks
        y: plate.y + Metrics.mm(3)
        width: root.upright ? root.wayWidth : root.wordsRight - parent.x
        spacing: Metrics.gap

        Repeater {
            model: root.asks ? root.bench.wayKeys.length : 0

            TouchKey {
                id: way

                required property int index

                width: root.wayWidth
                height: Metrics.mm(46)
                legendSize: Metrics.title
                hintSize: Metrics.text
                margin: Metrics.mm(3)
                offers: ScreenAction {
                    name: "way" + way.index
                    text: root.bench.wayKeys[way.index] ?? ""
                    hint: root.bench.wayMends[way.index] ?? ""
                    onTriggered: root.bench.takeWay(way.index)
                }
            }
        }
    }
}
