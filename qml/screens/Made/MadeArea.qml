import QtQuick
import Mountwright.Components
import Mountwright.ViewModels

// Measuring from the first figure to what follows from it: the pad, what changed, what the next board shall keep.
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
    function pass() {
        if (!made.forward())
            onwards();
    }
    function done() {
        if (page === "changes" && !changes.allSeen)
            changes.turn();
        else if (page !== "pad")
            onwards();
        else if (made.question !== "")
            return;
        else if (!made.keyed)
            onwards();
        else if (made.keep() && made.over())
            onwards();
    }
    function back() {
        if (page !== "pad")
            page = "pad";
        else if (!made.back())
            leave();
    }
    function pedalForward() {
        if (page === "pad")
            pass();
        else if (page === "follow")
            made.follow(!made.reveal);
        else
            done();
    }

    MadeScreen {
        anchors.fill: parent
        visible: root.page === "pad"
        made: root.made
        shelf: root.shelf
        area: root
        onPassed: root.pass()
    }
    ChangesPage {
        id: changes
        anchors.fill: parent
        visible: root.page === "changes"
        made: root.made
        shelf: root.shelf
        area: root
    }
    FollowPage {
        anchors.fill: parent
        visible: root.page === "follow"
        made: root.made
        shelf: root.shelf
        area: root
    }
}
