import QtQuick
import QtQuick.Window
import Mountwright.Alert
import Mountwright.Bench
import Mountwright.Cutting
import Mountwright.Design
import Mountwright.FarFace
import Mountwright.Jobs
import Mountwright.Made
import Mountwright.Number
import Mountwright.OffTime
import Mountwright.Pieces
import Mountwright.Record
import Mountwright.Room
import Mountwright.Settings
import Mountwright.Stock
import Mountwright.Theme
import Mountwright.ViewModels
import Mountwright.Welcome

// All navigation: which screen is up, and what Done, Back and Heard do there, by key and by pedal.
Window {
    id: root

    required property BenchViewModel bench
    required property ShelfModel shelf
    required property AlertViewModel alert
    required property JobsModel jobs
    required property WatchViewModel watch
    required property RoomViewModel room
    required property OffTimeViewModel off
    required property MadeViewModel made
    required property CuttingViewModel cutting
    required property DesignViewModel design
    required property PiecesModel pieces
    required property SettingsViewModel settings
    required property StockViewModel stock
    required property RecordViewModel record
    required property RenewalViewModel renewal
    required property CameraViewModel camera
    required property double dotsPerMm

    property string screen: "bench"
    property bool lamp: settings.lamp
    property string left: ""  // the screen shown before
    property string cutFrom: "job"  // the screen sheets are cut up from, and gone back to
    readonly property string shown: alert.up ? "alert" : screen
    // A property of its own, so that it is another only where it differs.
    readonly property string calling: alert.identity

    width: 1280
    height: 800
    color: Theme.paper
    title: qsTr("Mountwright")

    onShownChanged: {
        Touch.guard();
        if (shown === "room")
            room.open();
        if (shown === "made")
            measuring.open();
        if (shown === "settings")
            settings.open();
        // Nobody looks through it from another screen.
        if (left === "record" && camera.up)
            camera.close();
        left = shown;
    }
    // Beside a step's title stands its first number; the others are gone through on their own screen.
    onScreenChanged: {
        if (screen !== "number")
            bench.figure.begin();
    }
    onCallingChanged: Touch.guard()
    onLampChanged: Theme.lamp = lamp
    onDotsPerMmChanged: Metrics.dotsPerMm = dotsPerMm
    Component.onCompleted: {
        Metrics.dotsPerMm = dotsPerMm;
        Theme.lamp = lamp;
        Metrics.distance = settings.distance;
        if (!settings.introduced && pieces.all === 0 && bench.kind !== BenchViewModel.Trouble)
            screen = "welcome";
        askOffTime();
    }

    Connections {
        target: root.settings
        function onChanged() {
            Metrics.distance = root.settings.distance;
        }
    }
    Connections {
        target: root.alert
        function onAnswered() {
            if (root.screen === "bench" || root.screen === "far")
                root.afterLook();
        }
    }
    Connections {
        target: root.off
        function onChanged() {
            root.askOffTime();
        }
    }
    Timer {
        id: leftAlone
        interval: Touch.farAfter
        running: root.shown === "bench" && root.bench.stepId !== ""
        onTriggered: root.screen = "far"
    }

    // By itself only from where nothing is under way.
    function askOffTime() {
        if (off.asked && !off.putOff && (screen === "bench" || screen === "far"))
            screen = "off";
        else if (!off.offered && screen === "off")
            screen = "bench";
    }
    // A key, a touch or a pedal: somebody is there.
    function noticed() {
        if (leftAlone.running)
            leftAlone.restart();
    }
    function finish() {
        bench.finish();
        screen = "bench";
    }
    function finishOrCheck() {
        if (bench.checks.length > 0)
            screen = "checks";
        else
            finish();
    }
    function done() {
        bench.forgetRefusal();
        if (screen === "checks")
            checks.allSeen ? finish() : checks.turn();
        else if (screen === "room")
            screen = room.keep() ? "bench" : "room";
        else if (screen === "look")
            leaveLook();
        else if (screen === "off")
            screen = off.tell() ? "bench" : "off";
        else if (screen === "made")
            measuring.done();
        else if (screen === "cutting")
            screen = cutting.forward() ? "cutting" : cutFrom;
        else if (screen === "design")
            designing.done();
        else if (screen === "welcome")
            welcome.done();
        else if (screen === "stock")
            materials.done();
        else if (screen === "record")
            recorded.done();
        else if (screen === "renewal")
            renewing.done();
        else if (screen === "pieces")
            board.done();
        else if (screen === "piece" || screen === "settings")
            return;
        else if (screen === "mend" || screen === "far" || screen === "jobs" || screen === "job")
            screen = "bench";
        else if (bench.kind === BenchViewModel.Step && made.total > 0)
            screen = "made";
        else if (bench.kind === BenchViewModel.Step)
            finishOrCheck();
        else
            finish();
    }
    // What was found is asked about at once where it is far from what was expected.
    function afterLook() {
        screen = bench.look.doubted ? "look" : "bench";
    }
    function leaveLook() {
        bench.look.leave();
        screen = "bench";
    }
    function cutSheets() {
        cutFrom = screen;
        screen = "cutting";
    }
    function leaveOffTime() {
        off.later();
        screen = "bench";
    }
    function back() {
        if (bench.refusal !== "" && screen === "bench")
            bench.forgetRefusal();
        else if (screen === "off")
            leaveOffTime();
        else if (screen === "look")
            leaveLook();
        else if (screen === "made")
            measuring.back();
        else if (screen === "cutting")
            screen = cutting.back() ? "cutting" : cutFrom;
        else if (screen === "design")
            designing.goBack();
        else if (screen === "welcome")
            welcome.goBack();
        else if (screen === "piece")
            screen = "pieces";
        else if (screen === "stock" && materials.goBack())
            return;
        else if (screen === "record")
            screen = recorded.goBack() ? "record" : "piece";
        else if (screen === "renewal")
            screen = "piece";
        else if (screen === "job")
            screen = "jobs";
        else if (screen !== "bench")
            screen = "bench";
        else
            bench.takeBack();
    }
    // By pedal.
    function pedalForward() {
        if (alert.up)
            return;
        if (screen === "number") {
            if (!bench.figure.forward())
                screen = "bench";
        } else if (screen === "room") {
            room.more();
        } else if (screen === "made") {
            measuring.pedalForward();
        } else if (bench.kind === BenchViewModel.Missed && screen === "bench") {
            bench.takeUpMissed();
        } else if (screen === "bench" && bench.canBegin && bench.refusal === "") {
            // What holds a blade or cannot wait is taken up by the first press; refused, the next press goes on.
            bench.begin();
        } else {
            done();
        }
    }
    function pedalBack() {
        if (alert.up)
            return;
        if (screen === "room")
            room.less();
        else if (screen === "off")
            off.nextAnswer();
        else if (screen !== "number" || !bench.figure.back())
            back();
    }
    function heard() {
        if (alert.up)
            alert.hear();
    }

    BenchScreen {
        anchors.fill: parent
        visible: root.shown === "bench"
        bench: root.bench
        shelf: root.shelf
        watch: root.watch
        off: root.off
        onBack: root.back()
        onDone: root.done()
        onRoomAsked: root.screen = "room"
        onOffTimeAsked: root.screen = "off"
        onMoreAsked: root.screen = "more"
        onNumberAsked: root.screen = "number"
        onLookAsked: root.screen = "look"
        onJobsAsked: root.screen = "jobs"
        onDeskAsked: root.screen = "pieces"
    }
    MorePage {
        anchors.fill: parent
        visible: root.shown === "more"
        bench: root.bench
        shelf: root.shelf
        onBack: root.back()
        onDone: root.done()
        onFaultsAsked: root.screen = "faults"
        onJobsAsked: root.screen = "jobs"
        onFarAsked: root.screen = "far"
    }
    ChecksPage {
        id: checks
        anchors.fill: parent
        visible: root.shown === "checks"
        bench: root.bench
        shelf: root.shelf
        onBack: root.back()
        onDone: root.done()
    }
    LookPage {
        anchors.fill: parent
        visible: root.shown === "look"
        look: root.bench.look
        shelf: root.shelf
        onBack: root.back()
        onDone: root.done()
        onAnswered: root.afterLook()
    }
    FaultsPage {
        anchors.fill: parent
        visible: root.shown === "faults"
        bench: root.bench
        shelf: root.shelf
        onBack: root.back()
        onDone: root.done()
        onChosen: mend => {
            mendPage.mend = mend;
            root.screen = "mend";
        }
        onChoiceLeft: {
            mendPage.mend = "";
            root.screen = "mend";
        }
    }
    MendPage {
        id: mendPage
        anchors.fill: parent
        visible: root.shown === "mend"
        bench: root.bench
        shelf: root.shelf
        onBack: root.back()
        onDone: root.done()
    }
    NumberScreen {
        anchors.fill: parent
        visible: root.shown === "number"
        figure: root.bench.figure
        onBack: root.back()
        onDone: root.done()
        onStepAsked: root.screen = "bench"
    }
    FarFace {
        anchors.fill: parent
        visible: root.shown === "far"
        bench: root.bench
        shelf: root.shelf
        onTouched: root.screen = "bench"
    }
    JobsScreen {
        anchors.fill: parent
        visible: root.shown === "jobs"
        jobs: root.jobs
        onBack: root.back()
        onLightAsked: root.settings.turnLamp()
        onDeskAsked: root.screen = "pieces"
        onChosen: root.screen = "job"
    }
    JobPage {
        anchors.fill: parent
        visible: root.shown === "job"
        jobs: root.jobs
        shelf: root.shelf
        onBack: root.back()
        onDone: root.done()
        onCuttingAsked: root.cutSheets()
    }
    CuttingScreen {
        anchors.fill: parent
        visible: root.shown === "cutting"
        cutting: root.cutting
        shelf: root.shelf
        onBack: root.back()
        onDone: root.done()
    }
    DesignScreen {
        id: designing
        anchors.fill: parent
        visible: root.shown === "design"
        design: root.design
        onJobsAsked: root.screen = "pieces"
        onBenchAsked: root.screen = "bench"
    }
    PiecesScreen {
        id: board
        anchors.fill: parent
        visible: root.shown === "pieces"
        pieces: root.pieces
        onAsked: screen => root.screen = screen
        onFreshAsked: {
            if (root.design.beginFresh())
                root.screen = "design";
        }
        onChosen: root.screen = "piece"
    }
    PiecePage {
        anchors.fill: parent
        visible: root.shown === "piece"
        pieces: root.pieces
        renewal: root.renewal
        onAsked: screen => root.screen = screen
        onBenchAsked: root.screen = "bench"
        onDesignAsked: {
            if (root.design.openDesign(root.pieces.chosenId))
                root.screen = "design";
        }
        onAgainAsked: {
            if (root.design.beginAgain(root.pieces.chosenId))
                root.screen = "design";
        }
        onRecordAsked: root.screen = "record"
        onCuttingAsked: root.cutSheets()
        onRenewalAsked: root.screen = "renewal"
    }
    RenewalPage {
        id: renewing
        anchors.fill: parent
        visible: root.shown === "renewal"
        renewal: root.renewal
        onAsked: screen => root.screen = screen
    }
    RecordScreen {
        id: recorded
        anchors.fill: parent
        visible: root.shown === "record"
        record: root.record
        camera: root.camera
        onAsked: screen => root.screen = screen
    }
    StockScreen {
        id: materials
        anchors.fill: parent
        visible: root.shown === "stock"
        stock: root.stock
        onAsked: screen => root.screen = screen
    }
    SettingsScreen {
        anchors.fill: parent
        visible: root.shown === "settings"
        settings: root.settings
        room: root.room
        onAsked: screen => root.screen = screen
    }
    WelcomeScreen {
        id: welcome
        anchors.fill: parent
        visible: root.shown === "welcome"
        settings: root.settings
        onDemoTaken: root.screen = "bench"
        onPieceAsked: {
            if (root.design.beginFresh())
                root.screen = "design";
        }
        onOver: root.screen = "bench"
    }
    RoomScreen {
        anchors.fill: parent
        visible: root.shown === "room"
        room: root.room
        shelf: root.shelf
        onBack: root.back()
        onDone: root.done()
    }
    MadeArea {
        id: measuring
        anchors.fill: parent
        visible: root.shown === "made"
        made: root.made
        shelf: root.shelf
        onOver: root.finishOrCheck()
        onLeave: root.screen = "bench"
    }
    OffTimeScreen {
        anchors.fill: parent
        visible: root.shown === "off"
        off: root.off
        shelf: root.shelf
        onBack: root.back()
        onDone: root.done()
    }
    AlertScreen {
        anchors.fill: parent
        visible: root.shown === "alert"
        alert: root.alert
    }
}
