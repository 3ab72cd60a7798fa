import QtQuick
import Mountwright.Components
import Mountwright.ViewModels

// Measuring from the first figure to its consequences: the pad, the changes, the choice for the next board.
ScreenBase {
    id: root

    required property MadeViewModel made
    required property ShelfModel shelf
    property string page: "pad"

    Component.onCompleted: made.open()

    function onwards() {
        if (page === "pad" && made.changes.length + made.contradicted.length > 0)
            page = "changes";
        else if (page !== "follow" && made.followBoard !== "")
            page = "follow";
        else
            stepDone();
    }
    inner: page === "pad" ? pad : page === "changes" ? changes : choice
    function goBack() {
        if (page !== "pad")
            page = "pad";
        else if (!made.back())
            leave();
    }

    MadeScreen {
        id: pad
        anchors.fill: parent
        visible: root.page === "pad"
        made: root.made
        shelf: root.shelf
        onOnwards: root.onwards()
        onLeave: root.goBack()
    }
    ChangesPage {
        id: changes
        anchors.fill: parent
        visible: root.page === "changes"
        made: root.made
        shelf: root.shelf
        onOnwards: root.onwards()
        onLeave: root.goBack()
    }
    FollowPage {
        id: choice
        anchors.fill: parent
        visible: root.page === "follow"
        made: root.made
        shelf: root.shelf
        onOnwards: root.onwards()
        onLeave: root.goBack()
    }
}
