import QtQuick
import QtQuick.Templates as T

// The stack of open screens. The first stays; each other one is created when it is entered and destroyed when it is
// left.
T.StackView {
    id: root

    // A row holds a screen's name, its source, its properties, and the screen below it ("" for any).
    required property list<QtObject> rows
    property var names: [rows[0].name]
    readonly property ScreenBase current: currentItem as ScreenBase
    readonly property string screen: names[names.length - 1]

    // The caller has to call this before anything else.
    function begin() {
        push(rows[0].source, rows[0].given, T.StackView.Immediate);
    }
    function row(name: string): QtObject {
        for (let i = 0; i < rows.length; ++i) {
            if (rows[i].name === name)
                return rows[i];
        }
        throw new Error("No screen is called " + name);
    }
    // Goes back to a screen that is open already, or opens a new one above the screens that have to be below it.
    function open(name: string) {
        if (names.includes(name)) {
            cutTo(name);
            return;
        }
        const entered = [row(name)];
        while (entered[0].on !== "" && !names.includes(entered[0].on))
            entered.unshift(row(entered[0].on));
        if (entered[0].on !== "")
            cutTo(entered[0].on);
        const items = [];
        for (const one of entered)
            items.push(one.source, one.given);
        push(items, T.StackView.Immediate);
        names = names.concat(entered.map(one => one.name));
    }
    function leave() {
        if (names.length > 1)
            cutTo(names[names.length - 2]);
    }
    // Leaves all screens that were entered after it.
    function cutTo(name: string) {
        const at = names.lastIndexOf(name);
        if (at + 1 === names.length)
            return;
        for (let i = at + 1; i < names.length; ++i)
            (get(i, T.StackView.DontLoad) as ScreenBase)?.closed();
        pop(get(at, T.StackView.ForceLoad), T.StackView.Immediate);
        names = names.slice(0, at + 1);
    }
}
