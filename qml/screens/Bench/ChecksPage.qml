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
    readonly property bool allSeen: pages.page + 1 >= pages.pages

    function done() {
        if (allSeen)
            stepDone();
        else
            turn();
    }
    function turn() {
        pages.page = Math.min(pages.page + 1, pages.pages - 1);
    }

    actions: ScreenAction {
        name: "turn"
        text: qsTr("Turn")
        hint: qsTr("%1 of %2").arg(pages.page + 1).arg(pages.pages)
        enabled: pages.pages > 1
        place: ScreenAction.AboveDone
        onTriggered: root.turn()
    }

    Words {
        id: heading
        width: parent.width
        text: qsTr("Before it is done: is each of these so?")
        font.bold: true
    }
    PagedText {
        id: pages
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
