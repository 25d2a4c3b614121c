// Playing signatures and reviews: what an entry names by an earlier one, or by its subject.

#include "core/bench/card_in_force.h"
#include "core/replay/player.h"

namespace bathside {
namespace {

PlayFault unknown(const ScriptEntry& entry)
{
    return {entry.line, entry.verb, PlayFault::Kind::UnknownEntry, {}};
}

}  // namespace

std::optional<PlayFault> Player::sign(const ScriptEntry& entry, const SignEntry& signing)
{
    Sign sign = signing.sign;
    for (const std::string& id : signing.of) {
        const auto taken = m_taken.find(id);
        if (taken == m_taken.end())
            return unknown(entry);
        for (Seq seq = taken->second.first; seq <= taken->second.last; ++seq)
            sign.of.push_back(seq);
    }
    return say(entry, sign, entry.place);
}

std::optional<PlayFault> Player::review(const ScriptEntry& entry, const ReviewEntry& reviewing)
{
    ReviewDeviation review = reviewing.review;
    for (const auto& [seq, deviation] : m_station.bench().reviews.deviations) {
        const bool isMeant =
            deviation.fact.limit == reviewing.limit && deviation.fact.subject == reviewing.subject;
        if (isMeant)
            review.as.of = seq;
    }
    return say(entry, review, entry.place);
}

std::optional<PlayFault> Player::comment(const ScriptEntry& entry, const CommentEntry& commenting)
{
    const auto taken = m_taken.find(commenting.of);
    if (taken == m_taken.end())
        return unknown(entry);
    CommentNote comment = commenting.comment;
    comment.as.of = taken->second.first;
    return say(entry, comment, entry.place);
}

std::optional<PlayFault> Player::approve(const ScriptEntry& entry, const ApproveEntry& approval)
{
    const Card* waits = unapproved(m_station.bench());
    const bool isMeant = waits && waits->hash().text.starts_with(approval.hash);
    return say(entry, ApproveCard{approval.by, isMeant ? waits->hash() : CardHash{approval.hash}},
               entry.place);
}

}  // namespace bathside
