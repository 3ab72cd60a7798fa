import QtQuick
import Mountwright.Components
import Mountwright.ViewModels

// Measuring from the first figure to its consequences: the scale and the pad, the changes, the choice for the next board.
ScreenBase {
    id: root

    required property MadeViewModel made
    required property BenchViewModel bench
    required property WatchViewModel watch
    required property ShelfModel shelf
    property string page: "scale"

    Component.onCompleted: made.open()

    function onwards() {
        if ((page === "scale" || page === "digits") && made.changes.length + made.contradicted.length > 0)
            page = "changes";
        else if (page !== "follow" && made.followBoard !== "")
            page = "follow";
        else
            stepDone();
    }
    inner: page === "scale" ? scale : page === "digits" ? digits : page === "changes" ? changes : choice
    function goBack() {
        if (page !== "scale")
            page = "scale";
        else if (!made.back())
            leave();
    }
    // The pad lays its figure down at the scale of the next one.
    function taken() {
        page = "scale";
        if (made.over())
            onwards();
    }

    MadeScreen {
        id: scale
        anchors.fill: parent
        visible: root.page === "scale"
        made: root.made
        watch: root.watch
        piece: root.bench.shortPiece
        shelf: root.shelf
        onDigits: root.page = "digits"
        onOnwards: root.onwards()
        onLeave: root.goBack()
    }
    DigitsPage {
        id: digits
        anchors.fill: parent
        visible: root.page === "digits"
        made: root.made
        watch: root.watch
        piece: root.bench.shortPiece
        shelf: root.shelf
        onTaken: root.taken()
        onPassed: {
            root.made.forward();
            root.taken();
        }
        onLeave: {
            root.made.drop();
            root.page = "scale";
        }
    }
    ChangesPage {
        id: changes
        anchors.fill: parent
        visible: root.page === "changes"
        made: root.made
        watch: root.watch
        piece: root.bench.shortPiece
        shelf: root.shelf
        onOnwards: root.onwards()
        onLeave: root.goBack()
    }
    FollowPage {
        id: choice
        anchors.fill: parent
        visible: root.page === "follow"
        made: root.made
        watch: root.watch
        piece: root.bench.shortPiece
        shelf: root.shelf
        onOnwards: root.onwards()
        onLeave: root.goBack()
    }
}
