package keenward.core.reporting;

/**
 * The rows of {@link EventCodes}: a heading line opens each group; a row is the code, what its last
 * three digits name, the use of its qualifiers, its standing and its meaning in our own words.
 * Source: DC-05 (1999.09), event codes, as two public copies agree.
 */
final class EventTable {
  private EventTable() {}

  static final String ROWS =
      """
      # medical alarm
      100 zone event usual medical call, type not stated
      101 zone event usual personal emergency pendant or button
      102 zone event usual expected check-in not made
      # fire alarm
      110 zone event usual fire, type not stated
      111 zone event usual smoke detector operated
      112 zone event usual combustion products detected
      113 zone event usual sprinkler water flowing
      114 zone event usual heat detector operated
      115 zone event usual manual call point pulled
      116 zone event usual duct detector operated
      117 zone event usual flame detector operated
      118 zone event usual fire detector close to its alarm point
      # panic alarm
      120 zone event usual panic, type not stated
      121 user event usual duress code used
      122 zone event usual silent panic
      123 zone event usual audible panic
      124 zone event usual duress: entry was granted under threat
      125 zone event usual duress: exit was granted under threat
      # burglary alarm
      130 zone event usual burglary, type not stated
      131 zone event usual perimeter zone
      132 zone event usual interior zone
      133 zone event usual 24-hour (safe) zone
      134 zone event usual entry/exit zone
      135 zone event usual day/night zone
      136 zone event usual outdoor zone
      137 zone event usual burglary tamper
      138 zone event usual intrusion detector close to its alarm point
      139 zone event usual second event confirms intrusion
      # general alarm
      140 zone event usual general alarm, type not stated
      141 zone event usual polling loop open while reported as alarm
      142 zone event usual polling loop shorted while reported as alarm
      143 zone event usual expansion module failed (alarm)
      144 zone event usual sensor cover tamper (alarm)
      145 zone event usual expansion module tamper (alarm)
      146 zone event usual burglary, silent
      147 zone event usual sensor lost supervision (alarm)
      # 24-hour non-burglary
      150 zone event usual 24-hour non-burglary, type not stated
      151 zone event usual gas
      152 zone event usual refrigeration fault
      153 zone event usual heating lost
      154 zone event usual water leak
      155 zone event usual window foil broken
      156 zone event usual day zone trouble
      157 zone event usual bottled gas nearly empty
      158 zone event usual temperature high
      159 zone event usual temperature low
      160 zone event heading 24-hour non-burglary
      161 zone event usual air flow lost
      162 zone event usual carbon monoxide
      163 zone event usual tank level
      # fire supervisory
      200 zone event usual fire supervisory, type not stated
      201 zone event usual water pressure low
      202 zone event usual CO2 extinguishing pressure low
      203 zone event usual gate valve moved
      204 zone event usual water level low
      205 zone event usual pump running
      206 zone event usual pump failed
      210 zone event heading fire supervisory
      # system trouble
      300 zone event usual system trouble, type not stated
      301 zone event usual mains lost
      302 zone event usual system battery low
      303 zone event usual RAM checksum wrong
      304 zone event usual ROM checksum wrong
      305 zone event usual system restarted
      306 zone event usual programming changed
      307 zone event usual self-test failed
      308 zone event usual system shut down
      309 zone event usual battery failed its test
      310 zone event usual earth fault
      311 zone event usual battery missing or dead
      312 zone event usual supply over-current
      313 user event usual engineer reset
      # sounder/relay trouble
      320 zone event usual sounder or relay trouble
      321 zone event usual bell 1 trouble
      322 zone event usual bell 2 trouble
      323 zone event usual alarm relay trouble
      324 zone event usual trouble relay trouble
      325 zone event usual reversing relay trouble
      326 zone event usual notification circuit 3 trouble
      327 zone event usual notification circuit 4 trouble
      # system peripheral trouble
      330 zone event usual peripheral trouble
      331 zone event usual polling loop open
      332 zone event usual polling loop shorted
      333 zone event usual expansion module failed
      334 zone event usual repeater failed
      335 zone event usual printer out of paper
      336 zone event usual printer failed
      337 zone event usual module DC lost
      338 zone event usual module battery low
      339 zone event usual module restarted
      340 zone event heading peripheral trouble
      341 zone event usual module tamper
      342 zone event usual module mains lost
      343 zone event usual module self-test failed
      344 zone event usual radio receiver jammed
      # communication trouble
      350 zone event usual communication trouble
      351 zone event usual telephone line 1 fault
      352 zone event usual telephone line 2 fault
      353 zone event usual long-range radio transmitter fault
      354 zone event usual an event could not be delivered
      355 zone event usual radio supervision lost
      356 zone event usual polling by the centre lost
      357 zone event usual radio antenna mismatch (VSWR)
      360 zone event heading communication trouble
      # protection loop trouble
      370 zone event usual protection loop trouble
      371 zone event usual protection loop open
      372 zone event usual protection loop shorted
      373 zone event usual fire zone trouble
      374 zone event usual exit error: zone still open when exit time ended
      375 zone event usual panic zone trouble
      376 zone event usual hold-up zone trouble
      377 zone event usual swinger trouble
      378 zone event usual cross-zone trouble (one of the pair tripped alone)
      # sensor trouble
      380 zone event usual sensor trouble
      381 zone event usual wireless sensor lost
      382 zone event usual wired polled sensor lost
      383 zone event usual sensor tamper
      384 zone event usual wireless sensor battery low
      385 zone event usual smoke detector too sensitive
      386 zone event usual smoke detector too insensitive
      387 zone event usual intrusion detector too sensitive
      388 zone event usual intrusion detector too insensitive
      389 zone event usual sensor self-test failed
      391 zone event usual sensor not seen active (sensor watch)
      392 zone event usual drift compensation out of range
      393 zone event usual sensor needs maintenance
      # open/close
      400 user opening usual disarm/arm, type not stated
      401 user opening usual disarm/arm by a user
      402 user opening usual group disarm/arm
      403 user opening usual automatic disarm/arm
      404 user opening decode-only late disarm/arm (superseded by 453/454)
      405 user opening decode-only deferred disarm/arm (obsolete)
      406 user single usual user cancelled an alarm already sent
      407 user opening usual remote disarm/arm
      408 user opening usual quick arm without code
      409 user opening usual key switch disarm/arm
      # remote access
      410 zone event usual remote access
      411 user event usual call-back asked for
      412 user event usual remote session succeeded
      413 user event usual remote session refused
      414 user event usual system shut down by remote command
      415 user event usual dialler shut down by remote command
      416 zone event usual upload succeeded
      # access control
      420 zone event usual access control
      421 user event usual access refused
      422 user event usual access by user
      423 zone event usual forced door
      424 user event usual exit refused
      425 user event usual exit granted
      426 zone event usual door held open
      427 zone event usual door-position monitor trouble
      428 zone event usual request-to-exit trouble
      429 user event usual access programming entered
      430 user event usual access programming left
      431 user event usual access threat level changed
      432 zone event usual access relay/trigger failed
      433 zone event usual request-to-exit shunted
      434 zone event usual door-position monitor shunted
      # open/close
      440 user opening heading disarm/arm
      441 user opening usual armed stay / disarmed from stay
      442 user opening usual key switch armed stay
      # open/close exception
      450 user opening usual disarm/arm outside the normal pattern
      451 user opening usual early disarm/arm
      452 user opening usual late disarm/arm
      453 user single usual not disarmed by the due time
      454 user single usual not armed by the due time
      455 user single usual automatic arming failed
      456 user closing usual armed with zones left out
      457 user single usual exit error by user
      458 user single usual user on premises
      459 user single usual alarm soon after arming
      461 zone single usual wrong code entered
      462 user single usual valid code entered
      463 user single usual re-armed after alarm
      464 user single usual automatic arming postponed
      465 zone single usual panic alarm reset
      466 user opening usual service engineer on/off site
      # system disable
      500 zone disable usual system disable
      501 zone disable usual access reader disabled
      510 zone disable heading system disable
      # sounder/relay disable
      520 zone disable usual sounder/relay disabled
      521 zone disable usual bell 1 disabled
      522 zone disable usual bell 2 disabled
      523 zone disable usual alarm relay disabled
      524 zone disable usual trouble relay disabled
      525 zone disable usual reversing relay disabled
      526 zone disable usual notification circuit 3 disabled
      527 zone disable usual notification circuit 4 disabled
      # system peripheral disable
      530 zone disable usual peripheral disable
      531 zone disable usual module added
      532 zone disable usual module removed
      540 zone disable heading peripheral disable
      # communication disable
      550 zone disable usual communication disable
      551 zone disable usual dialler disabled
      552 zone disable usual radio transmitter disabled
      553 zone disable usual remote up/download disabled
      560 zone disable heading communication disable
      # bypass
      570 zone disable usual zone or sensor bypassed
      571 zone disable usual fire zone bypassed
      572 zone disable usual 24-hour zone bypassed
      573 zone disable usual burglary zone bypassed
      574 user disable usual group bypassed
      575 zone disable usual zone shut out by swinger limit
      576 zone disable usual access zone shunted
      577 zone disable usual access point bypassed
      # test/misc
      600 zone event usual test/misc
      601 zone event usual test report started by hand
      602 zone event usual periodic test report
      603 zone event usual periodic radio transmission
      604 user event usual fire test
      605 zone event usual status report follows
      606 zone event usual listen-in follows
      607 user event usual walk-test mode
      608 zone event usual periodic test, trouble present
      609 zone event usual video transmitter on
      610 zone event heading test/misc
      611 zone event usual point tested good
      612 zone event usual point not tested
      613 zone event usual intrusion zone walk-tested
      614 zone event usual fire zone walk-tested
      615 zone event usual panic zone walk-tested
      616 zone event usual service asked for
      # event log
      620 zone event usual event log
      621 zone event usual log cleared
      622 zone event usual log half full
      623 zone event usual log nine-tenths full
      624 zone event usual log overflowed
      625 user event usual clock set
      626 zone event usual clock doubtful
      627 zone event usual programming entered
      628 zone event usual programming left
      629 zone event usual 32-hour log marker
      # scheduling
      630 zone event usual schedule changed
      631 zone event usual exception schedule changed
      632 zone event usual access schedule changed
      # personnel monitoring
      640 zone event usual personnel monitoring
      641 zone event usual senior-watch trouble
      642 user event usual latch-key supervision
      # misc
      650 zone event usual miscellaneous
      651 zone event reserved reserved (proprietary)
      652 user event reserved reserved (proprietary)
      653 user event reserved reserved (proprietary)
      654 zone event usual no activity for the set time
      """;
}
