#include "ui/text/refusals.h"

#include <QCoreApplication>

#include "ui/text/subjects.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

struct RefusalText {
    Q_DECLARE_TR_FUNCTIONS(Refusal)
};

// Whom it is about, to begin the sentence.
QString whom(const Refusal& refusal) { return capitalised(subjectText(refusal.subject)); }

// What a lot in the stores is described by; empty: no such word.
QString stockFieldText(const std::string& word)
{
    if (word == "pieces")
        return RefusalText::tr("how many", "what is outside what can be");
    if (word == "stock place")
        return RefusalText::tr("the place in the stores", "what is outside what can be");
    if (word == "rate")
        return RefusalText::tr("the birds an hour", "what is outside what can be");
    if (word == "start")
        return RefusalText::tr("the line's start", "what is outside what can be");
    if (word == "target")
        return RefusalText::tr("the target", "what is outside what can be");
    if (word == "breaks")
        return RefusalText::tr("the breaks", "what is outside what can be");
    if (word == "why")
        return RefusalText::tr("the reason", "what is outside what can be");
    if (word == "lot")
        return RefusalText::tr("the lot", "what is outside what can be");
    if (word == "component" || word == "item")
        return RefusalText::tr("what it is", "what is outside what can be");
    if (word == "doses")
        return RefusalText::tr("the doses of an ampoule", "what is outside what can be");
    if (word == "volume_ml")
        return RefusalText::tr("the bag's volume", "what is outside what can be");
    if (word == "expires")
        return RefusalText::tr("the day of expiry", "what is outside what can be");
    if (word == "titre_pfu")
        return RefusalText::tr("the titre", "what is outside what can be");
    if (word == "vessel")
        return RefusalText::tr("the place in the stores", "what is outside what can be");
    if (word == "delivery")
        return RefusalText::tr("the delivery", "what is outside what can be");
    return {};
}

// What core names by a word of its own, else the value itself.
QString fieldText(const Refusal& refusal)
{
    const std::string& word = refusal.detail;
    if (word == "volume")
        return RefusalText::tr("the bag's volume", "what is outside what can be");
    if (word == "syringe")
        return RefusalText::tr("the volume drawn into the syringe", "what is outside what can be");
    if (word == "left")
        return RefusalText::tr("the volume left", "what is outside what can be");
    if (word == "birds" || word == "count")
        return RefusalText::tr("the number of birds", "what is outside what can be");
    if (word == "seconds")
        return RefusalText::tr("the time out of the cryogen", "what is outside what can be");
    if (word == "place")
        return RefusalText::tr("the place of the cane", "what is outside what can be");
    if (word == "text")
        return RefusalText::tr("the text", "what is outside what can be");
    if (word == "code")
        return RefusalText::tr("the scanned code", "what is outside what can be");
    const QString ofStock = stockFieldText(word);
    return ofStock.isEmpty() ? fromCore(word) : ofStock;
}

QString checkText(const Refusal& refusal, const Card* card, const std::string& language)
{
    if (card != nullptr) {
        for (const Check& check : card->content().checks) {
            if (check.id.text == refusal.detail)
                return fromCore(check.words.in(language));
        }
    }
    return fromCore(refusal.detail);
}

}  // namespace

// One line a code, so long only because there are so many.
QString refusalText(const Refusal& refusal, const Card* card, const std::string& language)
{
    const QString who = whom(refusal), detail = fromCore(refusal.detail),
                  field = fieldText(refusal);
    switch (refusal.code) {
        case RefusalCode::NoCard:
            return RefusalText::tr("There is no procedure card yet. Adopt one at set-up.");
        case RefusalCode::ShiftNotOpen:
            return RefusalText::tr("No shift is open. Open the shift first.");
        case RefusalCode::ShiftAlreadyOpen:
            return RefusalText::tr("The shift is open already.");
        case RefusalCode::AmpouleStillOpen:
            return RefusalText::tr("%1 is neither in a bag nor lost. Say first how it ended.")
                .arg(who);
        case RefusalCode::BagStillOpen:
            return RefusalText::tr("%1 is still open. Take it down first.").arg(who);
        case RefusalCode::NoPerson:
            return RefusalText::tr("Nobody is on duty. Enter your initials first.");
        case RefusalCode::UnknownCheck:
            return RefusalText::tr("The procedure card has no check named \"%1\".").arg(detail);
        case RefusalCode::CheckStillOpen:
            return RefusalText::tr("The check \"%1\" is open. Do it, or override it with a reason.")
                .arg(checkText(refusal, card, language));
        case RefusalCode::ReasonMissing:
            return RefusalText::tr("A reason is needed. Say why.");
        case RefusalCode::BagExists:
            return RefusalText::tr("%1 exists already. Give the new one another name.").arg(who);
        case RefusalCode::NoSuchBag:
            return RefusalText::tr("There is no such bag.");
        case RefusalCode::WhichBag:
            return RefusalText::tr("Which bag is not clear. Choose the bag.");
        case RefusalCode::BagIsDown:
            return RefusalText::tr("%1 is down. It takes nothing more.").arg(who);
        case RefusalCode::BagIsHeld:
            return RefusalText::tr("%1 is on hold. A shift lead decides about it.").arg(who);
        case RefusalCode::BagNotHeld:
            return RefusalText::tr("%1 is not on hold.").arg(who);
        case RefusalCode::BagNotInspected:
            return RefusalText::tr("%1 is not inspected yet. Inspect it first.").arg(who);
        case RefusalCode::BagIsEmpty:
            return RefusalText::tr("%1 has no ampoule in it yet.").arg(who);
        case RefusalCode::BagNotMixed:
            return RefusalText::tr("%1 is not mixed yet. Mix it first.").arg(who);
        case RefusalCode::BagAlreadyMixed:
            return RefusalText::tr("%1 is mixed already.").arg(who);
        case RefusalCode::AlreadyInspected:
            return RefusalText::tr("%1 is inspected already.").arg(who);
        case RefusalCode::AlreadyDrawn:
            return RefusalText::tr("The diluent of %1 is drawn already.")
                .arg(subjectText(refusal.subject));
        case RefusalCode::BagNotHung:
            return RefusalText::tr("%1 hangs on no line yet.").arg(who);
        case RefusalCode::LineHasBag:
            return RefusalText::tr("%1: take bag %2 down first.").arg(who, detail);
        case RefusalCode::AlreadyThere:
            return RefusalText::tr("It hangs there already.");
        case RefusalCode::NoAmpoule:
            return RefusalText::tr("No ampoule can take that step now.");
        case RefusalCode::NoSuchAmpoule:
            return RefusalText::tr("There is no such ampoule in this pull.");
        case RefusalCode::AmpouleExists:
            return RefusalText::tr("%1 is out already.").arg(who);
        case RefusalCode::AmpouleIsLost:
            return RefusalText::tr("%1 is lost. It takes no more steps.").arg(who);
        case RefusalCode::AmpouleInBag:
            return RefusalText::tr("%1 is in a bag. It takes no more steps.").arg(who);
        case RefusalCode::StepAlreadyDone:
            return RefusalText::tr("%1 has taken that step already.").arg(who);
        case RefusalCode::NoOpenPull:
            return RefusalText::tr("No ampoule is out of the cryogen yet.");
        case RefusalCode::WhichLine:
            return RefusalText::tr("Which line is not clear. Choose the line.");
        case RefusalCode::LineStopped:
            return RefusalText::tr("%1 is stopped already.").arg(who);
        case RefusalCode::LineGoing:
            return RefusalText::tr("%1 is going already.").arg(who);
        case RefusalCode::CountGoesBack:
            return RefusalText::tr("The birds counted so far are %1. The total cannot be less.")
                .arg(detail);
        case RefusalCode::NoSuchAlarm:
            return RefusalText::tr("No such alarm is due now.");
        case RefusalCode::NothingToTakeBack:
            return RefusalText::tr("There is nothing to take back.");
        case RefusalCode::NotInThisShift:
            return RefusalText::tr("That is not of this shift, or was taken back.");
        case RefusalCode::NoSuchField:
            return RefusalText::tr("That cannot be corrected in this entry: %1.").arg(field);
        case RefusalCode::BadValue:
            return RefusalText::tr("That value cannot be used: %1.").arg(field);
        case RefusalCode::NothingChanges:
            return RefusalText::tr("That is what stands there already.");
        case RefusalCode::NoSuchQuestion:
            return RefusalText::tr("That question is not open any more.");
        case RefusalCode::NoSuchChoice:
            return RefusalText::tr("That is none of the choices.");
        case RefusalCode::OutOfRange:
            return RefusalText::tr("That is outside what can be: %1.").arg(field);
        case RefusalCode::BadDocument:
            return RefusalText::tr("The document cannot be used. Look at \"%1\".").arg(detail);
        case RefusalCode::StationNotStarted:
            return RefusalText::tr("The station has not started yet. Wait a moment.");
        case RefusalCode::LotExpired:
            return RefusalText::tr("Lot %1 has expired. Take another, or ask a shift lead.")
                .arg(detail);
        case RefusalCode::LotInQuarantine:
            return RefusalText::tr("Lot %1 is in quarantine. Take another, or ask a shift lead.")
                .arg(detail);
        case RefusalCode::LotUnknown:
            return refusal.detail.empty()
                       ? RefusalText::tr("The lot is missing. Say which lot it is.")
                       : RefusalText::tr(
                             "The stores do not know lot %1. Receive it first, or ask "
                             "a shift lead.")
                             .arg(detail);
        case RefusalCode::LotDiffers:
            return RefusalText::tr(
                       "Lot %1 is in the stores with another expiry, titre or number "
                       "of doses. Look at the label again.")
                .arg(detail);
        case RefusalCode::NotInStores:
            return RefusalText::tr("The stores have none of that: %1.").arg(detail);
        case RefusalCode::NotEnough:
            return RefusalText::tr("There are only %1. Count them if there are more.").arg(detail);
        case RefusalCode::NoSuchPerson:
            return RefusalText::tr("%1 is not on the list of people. A shift lead can add them.")
                .arg(detail);
        case RefusalCode::NotAllowed:
            return refusal.detail.empty()
                       ? RefusalText::tr("The first person on the list has to be a shift lead.")
                       : RefusalText::tr("This is not for %1. Ask a shift lead.").arg(detail);
        case RefusalCode::NoPin:
            return RefusalText::tr("%1 has no PIN yet. Set one in Set-up, under People.")
                .arg(detail);
        case RefusalCode::NoSuchDeviation:
            return RefusalText::tr("There is no such deviation in this shift, or it is reviewed.");
        case RefusalCode::NoSuchNote:
            return RefusalText::tr("There is no such note in the record.");
        case RefusalCode::NoSuchVessel:
            return RefusalText::tr("There is no such vessel. Describe it first.");
        case RefusalCode::WrongLot:
            return refusal.detail.empty()
                       ? RefusalText::tr(
                             "Nothing of that lot belongs into the next bag. Put it back.")
                       : RefusalText::tr(
                             "Put it back and take lot %1, or choose the other one in the stores.")
                             .arg(detail);
        case RefusalCode::NobodyAsked:
            return RefusalText::tr(
                       "Here the code of %1 is read where it is asked who signs. To be on duty, "
                       "scan it on the bench page.")
                .arg(detail);
    }
    Q_UNREACHABLE();
}

}  // namespace bathside::ui
