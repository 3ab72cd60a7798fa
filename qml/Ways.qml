import QtQml
import Mountwright.Components
import Mountwright.Theme
import Mountwright.ViewModels

// The navigation between screens: those a screen asks for, and those that open by themselves.
QtObject {
    id: root

    required property Desk desk
    required property Stack stack

    function begin() {
        Metrics.distance = desk.settings.distance;
        stack.begin();
        if (!desk.settings.introduced && desk.pieces.all === 0 && desk.bench.kind !== BenchViewModel.Trouble)
            stack.open("welcome");
        askOffTime();
    }
    function askOffTime() {
        if (stack.current.idle && desk.off.asked && !desk.off.putOff)
            stack.open("off");
    }
    // Measures are asked for first; the checks stand on the act, so that it is done with all of them found so.
    function stepDone() {
        const isStep = desk.bench.kind === BenchViewModel.Step;
        const from = stack.screen;
        if (isStep && desk.made.total > 0 && from !== "made") {
            stack.open("made");
        } else {
            desk.bench.finish();
            stack.open("bench");
        }
    }

    readonly property Connections fromScreen: Connections {
        target: root.stack.current
        function onAsked(screen) {
            root.stack.open(screen);
        }
        function onLeave() {
            root.stack.leave();
        }
        function onOver() {
            root.stack.open("bench");
        }
        function onStepDone() {
            root.stepDone();
        }
    }
    readonly property Connections fromSettings: Connections {
        target: root.desk.settings
        function onChanged() {
            Metrics.distance = root.desk.settings.distance;
        }
    }
    readonly property Connections fromAlert: Connections {
        target: root.desk.alert
        function onAnswered() {
            if (root.stack.current.idle)
                root.stack.open(root.desk.bench.look.doubted ? "look" : "bench");
        }
    }
    readonly property Connections fromOffTime: Connections {
        target: root.desk.off
        function onChanged() {
            root.askOffTime();
        }
    }
}
