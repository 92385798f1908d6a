import QtQuick
import QtTest
import Candlemark
import "Walk.js" as Walk

Item {
    width: 400
    height: 200

    CountStepper {
        id: stepper
        width: 360
        label: "Panels"
        shown: "3"
        detail: "100 W each"
        held: 3
        minimumValue: 0
        maximumValue: 20
        canLess: true
        canMore: true
    }
    SignalSpy { id: less; target: stepper; signalName: "less" }
    SignalSpy { id: more; target: stepper; signalName: "more" }

    TestCase {
        name: "count_stepper"
        when: windowShown

        function init() {
            less.clear()
            more.clear()
            stepper.canLess = true
            stepper.canMore = true
        }
        function touch(name) {
            const button = Walk.named(stepper, name)
            touchEvent(button).press(0, button).commit()
            touchEvent(button).release(0, button).commit()
        }
        function test_a_finger_asks_for_more_and_for_less() {
            touch("more")
            compare(more.count, 1)
            touch("less")
            compare(less.count, 1)
        }
        function test_at_its_end_it_asks_for_nothing() {
            stepper.canMore = false
            touch("more")
            compare(more.count, 0)
        }
        function test_keys_do_the_same_as_a_finger() {
            const button = Walk.named(stepper, "more")
            button.forceActiveFocus(Qt.TabFocusReason)
            verify(button.visualFocus)
            keyClick(Qt.Key_Return)
            keyClick(Qt.Key_Space)
            keyClick(Qt.Key_Up)
            keyClick(Qt.Key_Plus)
            compare(more.count, 4)
            keyClick(Qt.Key_Down)
            keyClick(Qt.Key_Minus)
            compare(less.count, 2)
        }
        function test_it_shows_what_it_is_given() {
            compare(Walk.named(stepper, "count").text, "3")
        }
    }
}
