import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The line above the act: the time, and where the piece stands among its stages. What keeps an alert from being heard
// takes the whole line and as many more as it needs; the time stays.
Item {
    id: root

    required property BenchViewModel bench
    required property WatchViewModel watch
    readonly property bool troubled: watch.troubles !== ""

    implicitHeight: Math.max(time.height, strip.visible ? strip.height : 0)
    height: implicitHeight

    Words {
        id: time
        objectName: "watch"
        width: root.troubled ? root.width : implicitWidth
        text: root.troubled ? root.watch.time + " · " + root.watch.troubles : root.watch.time
        color: root.troubled ? Theme.worked : Theme.ink
        font.pixelSize: Metrics.label
        font.bold: true
    }
    StageStrip {
        id: strip
        anchors.right: parent.right
        visible: !root.troubled && stages.length > 1
        stages: root.bench.stages
        most: root.width - time.implicitWidth - Metrics.mm(6)
    }
}
