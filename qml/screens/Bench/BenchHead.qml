import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The line above the act: the time, what was done last, where the piece stands among its stages. What keeps an alert
// from being heard takes the whole line and as many more as it needs; the time stays.
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
        text: root.troubled ? root.watch.time + "\n" + root.watch.troubles : root.watch.time
        color: root.troubled ? Theme.worked : Theme.ink
        font.pixelSize: Metrics.label
        font.bold: true
    }
    Words {
        objectName: "above"
        anchors.left: time.right
        anchors.leftMargin: Metrics.mm(3)
        anchors.right: strip.left
        anchors.rightMargin: Metrics.mm(3)
        visible: !root.troubled && text !== "" && width > Metrics.mm(30)
        text: root.bench.above
        color: Theme.quiet
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
        elide: Text.ElideRight
    }
    StageStrip {
        id: strip
        anchors.right: parent.right
        visible: !root.troubled && stages.length > 1
        stages: root.bench.stages
        most: root.width * 0.6
    }
}
