#pragma once

// What a person hears at once after a tap, besides seeing it. Must return immediately.

namespace bathside::ui {

class Feedback {
public:
    Feedback() = default;
    Feedback(const Feedback&) = delete;
    Feedback& operator=(const Feedback&) = delete;
    virtual ~Feedback() = default;

    virtual void taken() = 0;
    virtual void refused() = 0;
};

}  // namespace bathside::ui
