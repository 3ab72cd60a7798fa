import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The checks of a step: Done again answers them, Back leaves the step as it was.
CornerFrame {
    id: root

    required property BenchViewModel bench
    // Done answers only once every check has been seen.
    readonly property bool allSeen: text.page + 1 >= text.pages

    function done() {
        if (allSeen)
            stepDone();
        else
            turn();
    }
    function turn() {
        text.page = Math.min(text.page + 1, text.pages - 1);
    }

    keys: TouchKey {
        objectName: "turn"
        visible: text.pages > 1
        width: Metrics.corner
        height: Metrics.benchKey
        legend: qsTr("Turn")
        hint: qsTr("%1 of %2").arg(text.page + 1).arg(text.pages)
        onActed: root.turn()
    }

    Words {
        id: heading
        width: parent.width
        text: qsTr("Before it is done: is each of these so?")
        font.bold: true
    }
    PagedText {
        id: text
        anchors.top: heading.bottom
        anchors.topMargin: Metrics.mm(3)
        anchors.bottom: foot.top
        width: parent.width
        paragraphs: root.bench.checks
    }
    Words {
        id: foot
        anchors.bottom: parent.bottom
        width: parent.width
        text: qsTr("Done: all are so. Back: not yet.")
        color: Theme.quiet
        font.pixelSize: Metrics.label
    }
}
