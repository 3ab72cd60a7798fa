import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The changes that the measures cause in the steps ahead, and the steps done with the old figures.
CornerFrame {
    id: root

    required property MadeViewModel made
    required property WatchViewModel watch
    required property string piece
    readonly property bool allSeen: pages.page + 1 >= pages.pages

    function turn() {
        pages.page = Math.min(pages.page + 1, pages.pages - 1);
    }

    function done() {
        if (allSeen)
            onwards();
        else
            turn();
    }

    // The maker has read everything.
    signal onwards

    actions: ScreenAction {
        name: "turn"
        text: qsTr("Page")
        hint: qsTr("%1 of %2").arg(pages.page + 1).arg(pages.pages)
        enabled: pages.pages > 1
        place: ScreenAction.AboveDone
        onTriggered: root.turn()
    }

    PageHead {
        id: heading
        width: parent.width
        watch: root.watch
        piece: root.piece
        title: root.made.contradicted.length > 0 ? qsTr("Finished work no longer agrees") : qsTr("What follows from it")
        where: root.made.contradicted.length > 0 ? qsTr("and what follows") : ""
    }
    PagedText {
        id: pages
        anchors.top: heading.bottom
        anchors.topMargin: Metrics.mm(3)
        anchors.bottom: parent.bottom
        width: parent.width
        paragraphs: [...root.made.contradicted, ...root.made.changes]
    }
}
