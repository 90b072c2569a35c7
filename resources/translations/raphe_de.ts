<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>VisitMap</name>
    <message>
        <source>What we did</source>
        <translation>Was wir gemacht haben</translation>
    </message>
    <message>
        <source>You did not feel well at one point. We wrote it down.</source>
        <translation>Einmal ging es Ihnen nicht gut. Das haben wir aufgeschrieben.</translation>
    </message>
    <message>
        <source>What to do at home</source>
        <translation>Was Sie zu Hause tun können</translation>
    </message>
    <message>
        <source>What to expect</source>
        <translation>Was Sie erwarten können</translation>
    </message>
    <message>
        <source>Call or see a doctor if</source>
        <translation>Wann Sie anrufen oder zum Arzt gehen</translation>
    </message>
    <message>
        <source>Call the emergency number at once if:</source>
        <translation>Wählen Sie sofort den örtlichen Notruf, wenn:</translation>
    </message>
    <message>
        <source>See a doctor today if:</source>
        <translation>Gehen Sie heute noch zum Arzt oder zur Ärztin, wenn:</translation>
    </message>
    <message>
        <source>Call us if:</source>
        <translation>Rufen Sie uns an, wenn:</translation>
    </message>
    <message>
        <source>It is not known how exact this test is.</source>
        <translation>Wie genau dieser Test ist, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>That is about the same.</source>
        <translation>Das ist etwa gleich.</translation>
    </message>
    <message>
        <source>That is better, by more than the test can be off.</source>
        <translation>Das ist besser, und zwar um mehr, als der Test ungenau ist.</translation>
    </message>
    <message>
        <source>That is worse, by more than the test can be off.</source>
        <translation>Das ist schlechter, und zwar um mehr, als der Test ungenau ist.</translation>
    </message>
    <message>
        <source>Not checked again today: {count}.</source>
        <translation>Heute nicht noch einmal geprüft: {count}.</translation>
    </message>
    <message>
        <source>{before} before, {now} now.</source>
        <translation>Vorher {before}, jetzt {now}.</translation>
    </message>
    <message>
        <source>Your pain, from 0 to 10:</source>
        <translation>Ihr Schmerz, von 0 bis 10:</translation>
    </message>
    <message>
        <source>It still hurts.</source>
        <translation>Es tut noch weh.</translation>
    </message>
    <message>
        <source>It hurt before. Now it does not.</source>
        <translation>Vorher tat es weh. Jetzt nicht mehr.</translation>
    </message>
    <message>
        <source>It did not hurt before. Now it does.</source>
        <translation>Vorher tat es nicht weh. Jetzt tut es weh.</translation>
    </message>
    <message>
        <source>Tests that hurt before: {before}. Of these, still sore now: {now}.</source>
        <translation>Tests, die vorher weh taten: {before}. Davon tun jetzt noch weh: {now}.</translation>
    </message>
    <message>
        <source>Tests that hurt only now: {count}.</source>
        <translation>Tests, die erst jetzt weh tun: {count}.</translation>
    </message>
    <message>
        <source>What hands feel is not exact. Take it as a hint.</source>
        <translation>Was Hände fühlen, ist nicht genau. Nehmen Sie es als Hinweis.</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Was sich verändert hat</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>linke Seite</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>rechte Seite</translation>
    </message>
    <message>
        <source>{place}, in the middle</source>
        <translation>{place}, in der Mitte</translation>
    </message>
    <message>
        <source>not sore</source>
        <translation>nicht druckempfindlich</translation>
    </message>
    <message>
        <source>a bit sore</source>
        <translation>etwas druckempfindlich</translation>
    </message>
    <message>
        <source>sore</source>
        <translation>druckempfindlich</translation>
    </message>
    <message>
        <source>very sore</source>
        <translation>sehr druckempfindlich</translation>
    </message>
    <message>
        <source>sore to the least touch</source>
        <translation>schmerzt schon bei leichtester Berührung</translation>
    </message>
    <message>
        <source>moves well</source>
        <translation>bewegt sich gut</translation>
    </message>
    <message>
        <source>moves a bit less</source>
        <translation>bewegt sich etwas weniger</translation>
    </message>
    <message>
        <source>does not move with ease</source>
        <translation>bewegt sich nicht leicht</translation>
    </message>
    <message>
        <source>hardly moves</source>
        <translation>bewegt sich kaum</translation>
    </message>
    <message>
        <source>checked, nothing found</source>
        <translation>geprüft, nichts gefunden</translation>
    </message>
    <message>
        <source>checked, not sore</source>
        <translation>geprüft, nicht druckempfindlich</translation>
    </message>
    <message>
        <source>checked, moves well</source>
        <translation>geprüft, bewegt sich gut</translation>
    </message>
    <message>
        <source>not checked today</source>
        <translation>heute nicht geprüft</translation>
    </message>
    <message>
        <source>noted</source>
        <translation>vermerkt</translation>
    </message>
    <message>
        <source>This is the pain you know.</source>
        <translation>Das ist der Schmerz, den Sie kennen.</translation>
    </message>
    <message>
        <source>less than a minute</source>
        <translation>weniger als eine Minute</translation>
    </message>
    <message>
        <source>about 1 minute</source>
        <translation>etwa 1 Minute</translation>
    </message>
    <message>
        <source>about {count} minutes</source>
        <translation>etwa {count} Minuten</translation>
    </message>
    <message>
        <source>Get medical help at once. We did not go on with this visit.</source>
        <translation>Holen Sie sofort ärztliche Hilfe. Wir haben hier nicht weiter behandelt.</translation>
    </message>
    <message>
        <source>Let a doctor see this today.</source>
        <translation>Lassen Sie das heute noch ärztlich untersuchen.</translation>
    </message>
    <message>
        <source>Let a doctor see this before we treat it here.</source>
        <translation>Lassen Sie das ärztlich untersuchen, bevor wir es hier behandeln.</translation>
    </message>
    <message>
        <source>We saw: {sign}.</source>
        <translation>Wir haben gesehen: {sign}.</translation>
    </message>
    <message>
        <source>We asked: &apos;{question}&apos; You said yes.</source>
        <translation>Wir haben gefragt: „{question}“ Sie haben Ja gesagt.</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorne</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>Now: what we felt again</source>
        <translation>Jetzt: noch einmal gefühlt</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>moves less</source>
        <translation>bewegt sich weniger</translation>
    </message>
    <message>
        <source>sore and moves less</source>
        <translation>druckempfindlich und bewegt sich weniger</translation>
    </message>
    <message>
        <source>ring: the pain you know</source>
        <translation>Ring: der Schmerz, den Sie kennen</translation>
    </message>
    <message>
        <source>page {page} of {pages}</source>
        <translation>Seite {page} von {pages}</translation>
    </message>
    <message>
        <source>No cautions were told. Let us know if your health or medicines change.</source>
        <translation>Es wurde nichts genannt, worauf wir achten müssen. Sagen Sie uns, wenn sich Ihre Gesundheit oder Ihre Medikamente ändern.</translation>
    </message>
    <message>
        <source>We take care because of: {cautions}</source>
        <translation>Wir sind vorsichtig wegen: {cautions}</translation>
    </message>
    <message>
        <source>Your visit</source>
        <translation>Ihr Besuch</translation>
    </message>
    <message>
        <source>In your words: {words}</source>
        <translation>In Ihren Worten: {words}</translation>
    </message>
    <message>
        <source>What we found</source>
        <translation>Was wir gefunden haben</translation>
    </message>
    <message>
        <source>This page shows where hands found something. It is not a diagnosis. It assists a trained practitioner, who follows local law, scope of practice and licensed care. If things get worse or new signs appear, seek medical help.</source>
        <translation>Diese Seite zeigt, wo Hände etwas gefunden haben. Sie ist keine Diagnose. Sie hilft einer ausgebildeten Fachkraft, die sich an örtliches Recht, ihre Befugnisse und die ärztliche Versorgung hält. Wenn es schlimmer wird oder neue Zeichen auftreten, holen Sie ärztliche Hilfe.</translation>
    </message>
    <message>
        <source>{now}, as before.</source>
        <translation>{now}, wie vorher.</translation>
    </message>
</context>
<context>
    <name>home-advice</name>
    <message>
        <source>If your doctor told you otherwise, that comes first.</source>
        <extracomment>stands above all advice</extracomment>
        <translation>Wenn Ihre Ärztin oder Ihr Arzt etwas anderes gesagt hat, gilt das zuerst.</translation>
    </message>
    <message>
        <source>Nothing here should hurt more than a soft pull.</source>
        <extracomment>stands above all advice</extracomment>
        <translation>Nichts davon soll stärker wehtun als ein sanftes Ziehen.</translation>
    </message>
    <message>
        <source>If you are not sure, ask us first.</source>
        <extracomment>stands above all advice</extracomment>
        <translation>Wenn Sie unsicher sind, fragen Sie uns zuerst.</translation>
    </message>
    <message>
        <source>Walk a little, often</source>
        <extracomment>walk-a-little, title</extracomment>
        <translation>Gehen Sie oft ein wenig zu Fuß</translation>
    </message>
    <message>
        <source>Keep up your day as well as you can. Walk a little, and do so often. Start on flat ground, and add a bit more as it gets easy. With low back pain, rest in bed helps no more than moving.</source>
        <extracomment>walk-a-little, text</extracomment>
        <translation>Leben Sie Ihren Alltag weiter, so gut es geht. Gehen Sie ein wenig zu Fuß, und das oft. Beginnen Sie auf ebenem Boden. Gehen Sie etwas mehr, wenn es leichter wird. Bei Kreuzschmerzen hilft Bettruhe nicht besser als Bewegung.</translation>
    </message>
    <message>
        <source>Stop if the pain grows, your chest hurts, or you feel faint.</source>
        <extracomment>walk-a-little, stop</extracomment>
        <translation>Hören Sie auf, wenn der Schmerz zunimmt, die Brust wehtut oder Sie fast ohnmächtig werden.</translation>
    </message>
    <message>
        <source>Share out your day</source>
        <extracomment>pace-your-day, title</extracomment>
        <translation>Teilen Sie Ihren Tag ein</translation>
    </message>
    <message>
        <source>Cut big jobs into small ones. Take a short rest before it hurts, not after. On a good day, do not try to do it all.</source>
        <extracomment>pace-your-day, text</extracomment>
        <translation>Teilen Sie große Arbeiten in kleine auf. Machen Sie eine kurze Pause, bevor es wehtut, nicht danach. Versuchen Sie an einem guten Tag nicht, alles zu schaffen.</translation>
    </message>
    <message>
        <source>Do less for a day or two if you feel worse the next day.</source>
        <extracomment>pace-your-day, stop</extracomment>
        <translation>Tun Sie ein oder zwei Tage weniger, wenn es Ihnen am nächsten Tag schlechter geht.</translation>
    </message>
    <message>
        <source>Warm it, if you like warmth</source>
        <extracomment>warmth, title</extracomment>
        <translation>Wärmen Sie die Stelle, wenn Sie Wärme mögen</translation>
    </message>
    <message>
        <source>Lay a warm pack on the sore place for about 15 minutes. It should feel nice and warm, not hot. Put a cloth between the pack and your skin. Do not fall asleep on it.</source>
        <extracomment>warmth, text</extracomment>
        <translation>Legen Sie etwa 15 Minuten eine Wärmepackung auf die schmerzende Stelle. Es soll angenehm warm sein, nicht heiß. Legen Sie ein Tuch zwischen Packung und Haut. Schlafen Sie nicht darauf ein.</translation>
    </message>
    <message>
        <source>Take it off if it feels hot, or if the skin stings or goes numb.</source>
        <extracomment>warmth, stop</extracomment>
        <translation>Nehmen Sie die Packung weg, wenn sie sich heiß anfühlt. Tun Sie das auch, wenn die Haut brennt, sticht oder taub wird.</translation>
    </message>
    <message>
        <source>Cold, only if you like it</source>
        <extracomment>cold-if-liked, title</extracomment>
        <translation>Kälte nur, wenn Sie sie mögen</translation>
    </message>
    <message>
        <source>Some people like cold on a sore place. Wrap the pack in a cloth, and use it for 10 minutes at most. Do not use cold if your fingers or toes turn white in the cold.</source>
        <extracomment>cold-if-liked, text</extracomment>
        <translation>Manche Menschen mögen Kälte auf einer schmerzenden Stelle. Wickeln Sie die Packung in ein Tuch, und legen Sie sie höchstens 10 Minuten auf. Nehmen Sie keine Kälte, wenn Ihre Finger oder Zehen bei Kälte weiß werden.</translation>
    </message>
    <message>
        <source>Take it off if it burns, or if your skin turns white or numb.</source>
        <extracomment>cold-if-liked, stop</extracomment>
        <translation>Nehmen Sie die Packung weg, wenn es brennt oder die Haut weiß oder taub wird.</translation>
    </message>
    <message>
        <source>Change how you sit, often</source>
        <extracomment>change-how-you-sit, title</extracomment>
        <translation>Ändern Sie oft, wie Sie sitzen</translation>
    </message>
    <message>
        <source>No way to sit is good for long. Shift, lean back, or stand up and take a few steps. Do so before it starts to hurt. A clock can help you think of it.</source>
        <extracomment>change-how-you-sit, text</extracomment>
        <translation>Keine Art zu sitzen ist lange gut. Setzen Sie sich anders hin, oder lehnen Sie sich zurück. Oder stehen Sie auf, und gehen Sie ein paar Schritte. Tun Sie das, bevor es wehtut. Eine Uhr kann Sie daran erinnern.</translation>
    </message>
    <message>
        <source>If getting up makes you dizzy, sit down again and rise more slowly.</source>
        <extracomment>change-how-you-sit, stop</extracomment>
        <translation>Wenn Ihnen beim Aufstehen schwindlig wird, setzen Sie sich wieder. Stehen Sie dann langsamer auf.</translation>
    </message>
    <message>
        <source>Sleep with a sore back</source>
        <extracomment>sleep-with-a-sore-back, title</extracomment>
        <translation>Schlafen mit schmerzendem Rücken</translation>
    </message>
    <message>
        <source>Lie on your side with a pillow between your knees. Or lie on your back with a pillow below your knees. To get up, roll on your side first, then push up with your arms. Late in pregnancy, go to sleep on your side.</source>
        <extracomment>sleep-with-a-sore-back, text</extracomment>
        <translation>Legen Sie sich auf die Seite, mit einem Kissen zwischen den Knien. Oder legen Sie sich auf den Rücken, mit einem Kissen unter den Knien. Zum Aufstehen rollen Sie sich erst auf die Seite. Drücken Sie sich dann mit den Armen hoch. Schlafen Sie spät in der Schwangerschaft auf der Seite ein.</translation>
    </message>
    <message>
        <source>Lie some other way if it hurts more or is hard to breathe.</source>
        <extracomment>sleep-with-a-sore-back, stop</extracomment>
        <translation>Legen Sie sich anders hin, wenn es mehr wehtut oder das Atmen schwerfällt.</translation>
    </message>
    <message>
        <source>Sleep with a sore neck or shoulder</source>
        <extracomment>sleep-with-a-sore-neck-or-shoulder, title</extracomment>
        <translation>Schlafen mit schmerzendem Nacken oder schmerzender Schulter</translation>
    </message>
    <message>
        <source>Choose a pillow that keeps your head in line with your back. Stay off the sore shoulder. Rest that arm on a second pillow in front of you. Lying face down may strain your neck.</source>
        <extracomment>sleep-with-a-sore-neck-or-shoulder, text</extracomment>
        <translation>Nehmen Sie ein Kissen, das Ihren Kopf in einer Linie mit dem Rücken hält. Liegen Sie nicht auf der schmerzenden Schulter. Legen Sie diesen Arm vor sich auf ein zweites Kissen. Die Bauchlage kann den Nacken belasten.</translation>
    </message>
    <message>
        <source>Try some other way to lie if your arm or hand goes numb.</source>
        <extracomment>sleep-with-a-sore-neck-or-shoulder, stop</extracomment>
        <translation>Versuchen Sie eine andere Lage, wenn Ihr Arm oder Ihre Hand taub wird.</translation>
    </message>
    <message>
        <source>Lift close to you</source>
        <extracomment>lift-close, title</extracomment>
        <translation>Heben Sie nah am Körper</translation>
    </message>
    <message>
        <source>Test the load first. Hold it close and breathe as you lift. Move your feet to turn. Get help, or go twice with less.</source>
        <extracomment>lift-close, text</extracomment>
        <translation>Prüfen Sie zuerst, wie schwer die Last ist. Halten Sie sie nah am Körper, und atmen Sie beim Heben. Setzen Sie zum Drehen die Füße um. Holen Sie Hilfe, oder gehen Sie zweimal mit weniger.</translation>
    </message>
    <message>
        <source>Put it down if you feel a sharp pain or a pull in the groin.</source>
        <extracomment>lift-close, stop</extracomment>
        <translation>Stellen Sie die Last ab bei stechendem Schmerz oder einem Ziehen in der Leiste.</translation>
    </message>
    <message>
        <source>Breathe with ease</source>
        <extracomment>breathe-easily, title</extracomment>
        <translation>Atmen Sie leicht und ruhig</translation>
    </message>
    <message>
        <source>Sit or lie so that you can let go. Put one hand on your belly. Let the air come in through your nose, and let it out slowly. Do this for as long as it feels good.</source>
        <extracomment>breathe-easily, text</extracomment>
        <translation>Sitzen oder liegen Sie so, dass Sie loslassen können. Legen Sie eine Hand auf den Bauch. Lassen Sie die Luft durch die Nase herein, und lassen Sie sie langsam hinaus. Tun Sie das, solange es guttut.</translation>
    </message>
    <message>
        <source>Stop if you feel dizzy or uneasy, or if your lips tingle.</source>
        <extracomment>breathe-easily, stop</extracomment>
        <translation>Hören Sie auf, wenn Ihnen schwindlig oder unwohl wird oder Ihre Lippen kribbeln.</translation>
    </message>
    <message>
        <source>Move your neck softly</source>
        <extracomment>move-the-neck, title</extracomment>
        <translation>Bewegen Sie sanft den Nacken</translation>
    </message>
    <message>
        <source>Sit tall. Look slowly to one side, then to the other. Then drop your chin a little and lift it again. Go only as far as is easy, a few times.</source>
        <extracomment>move-the-neck, text</extracomment>
        <translation>Sitzen Sie aufrecht. Schauen Sie langsam zur einen Seite, dann zur anderen. Senken Sie dann das Kinn ein wenig, und heben Sie es wieder. Gehen Sie nur so weit, wie es leicht ist. Machen Sie das ein paar Mal.</translation>
    </message>
    <message>
        <source>Stop if you feel dizzy or sick, see badly, or feel tingling in an arm.</source>
        <extracomment>move-the-neck, stop</extracomment>
        <translation>Hören Sie auf, wenn Ihnen schwindlig oder übel wird. Hören Sie auch auf, wenn Sie schlecht sehen oder ein Arm kribbelt.</translation>
    </message>
    <message>
        <source>Turn your upper back</source>
        <extracomment>move-the-upper-back, title</extracomment>
        <translation>Drehen Sie den oberen Rücken</translation>
    </message>
    <message>
        <source>Sit on a firm chair with your feet flat. Cross your arms on your chest. Turn your chest slowly to one side, then to the other. Breathe out as you turn.</source>
        <extracomment>move-the-upper-back, text</extracomment>
        <translation>Setzen Sie sich auf einen festen Stuhl, die Füße flach am Boden. Kreuzen Sie die Arme vor der Brust. Drehen Sie den Brustkorb langsam zur einen Seite, dann zur anderen. Atmen Sie beim Drehen aus.</translation>
    </message>
    <message>
        <source>Stop at a sharp pain, or at pain that runs round the ribs.</source>
        <extracomment>move-the-upper-back, stop</extracomment>
        <translation>Hören Sie auf bei stechendem Schmerz oder bei Schmerz, der um die Rippen zieht.</translation>
    </message>
    <message>
        <source>Rock your low back</source>
        <extracomment>move-the-low-back, title</extracomment>
        <translation>Schaukeln Sie den unteren Rücken</translation>
    </message>
    <message>
        <source>Lie on your back with your knees bent and your feet flat. Let both knees sway a little to one side, then to the other. Keep it small and slow. Breathe as you go.</source>
        <extracomment>move-the-low-back, text</extracomment>
        <translation>Legen Sie sich auf den Rücken, die Knie gebeugt, die Füße flach. Lassen Sie beide Knie ein wenig zur einen Seite pendeln, dann zur anderen. Bewegen Sie sich nur wenig und langsam. Atmen Sie dabei weiter.</translation>
    </message>
    <message>
        <source>Stop if pain runs down a leg, or if a leg tingles or feels weak.</source>
        <extracomment>move-the-low-back, stop</extracomment>
        <translation>Hören Sie auf, wenn Schmerz ins Bein zieht oder ein Bein kribbelt oder schwach wird.</translation>
    </message>
    <message>
        <source>Swing your hip</source>
        <extracomment>move-the-hip, title</extracomment>
        <translation>Schwingen Sie das Bein aus der Hüfte</translation>
    </message>
    <message>
        <source>Stand tall and hold on to a table or a sink. Swing one leg softly to the front and to the back. Keep the swing small. Then do the other leg.</source>
        <extracomment>move-the-hip, text</extracomment>
        <translation>Stehen Sie aufrecht, und halten Sie sich an einem Tisch oder Waschbecken fest. Schwingen Sie ein Bein sanft nach vorne und nach hinten. Schwingen Sie nur wenig. Machen Sie es dann mit dem anderen Bein.</translation>
    </message>
    <message>
        <source>Stop if your groin pinches or you do not feel safe on your feet.</source>
        <extracomment>move-the-hip, stop</extracomment>
        <translation>Hören Sie auf, wenn es in der Leiste zwickt oder Sie nicht sicher stehen.</translation>
    </message>
    <message>
        <source>Bend and straighten your knee</source>
        <extracomment>move-the-knee, title</extracomment>
        <translation>Beugen und strecken Sie das Knie</translation>
    </message>
    <message>
        <source>Sit on a chair. Lift one foot till your knee is as straight as is easy. Hold it for one breath, then let it down slowly. Do this a few times with each leg.</source>
        <extracomment>move-the-knee, text</extracomment>
        <translation>Setzen Sie sich auf einen Stuhl. Heben Sie einen Fuß, bis das Knie so gerade ist, wie es leicht geht. Halten Sie das einen Atemzug lang, und senken Sie den Fuß langsam. Tun Sie das ein paar Mal mit jedem Bein.</translation>
    </message>
    <message>
        <source>Stop if the knee locks, gives way, swells or gets hot.</source>
        <extracomment>move-the-knee, stop</extracomment>
        <translation>Hören Sie auf, wenn das Knie blockiert, wegknickt, anschwillt oder heiß wird.</translation>
    </message>
    <message>
        <source>Move your ankle and toes</source>
        <extracomment>move-the-ankle, title</extracomment>
        <translation>Bewegen Sie Fußgelenk und Zehen</translation>
    </message>
    <message>
        <source>Sit, or lie with your leg up. Pull your toes up, then point them down. Then draw small rings with your foot. Do this now and then in the day.</source>
        <extracomment>move-the-ankle, text</extracomment>
        <translation>Setzen Sie sich, oder legen Sie sich mit hochgelegtem Bein hin. Ziehen Sie die Zehen hoch, und strecken Sie sie dann nach unten. Machen Sie dann mit dem Fuß kleine Kreise. Tun Sie das ab und zu am Tag.</translation>
    </message>
    <message>
        <source>Stop if your calf is sore, hot or swollen, and see a doctor today.</source>
        <extracomment>move-the-ankle, stop</extracomment>
        <translation>Hören Sie auf, wenn die Wade schmerzt, heiß oder geschwollen ist. Gehen Sie damit heute noch zum Arzt oder zur Ärztin.</translation>
    </message>
    <message>
        <source>Slide your arm on a table</source>
        <extracomment>move-the-shoulder, title</extracomment>
        <translation>Schieben Sie den Arm auf einem Tisch</translation>
    </message>
    <message>
        <source>Sit at a table and lay your hand on a cloth. Slide it to the front as far as is easy. Slide it back again. Do this slowly, a few times.</source>
        <extracomment>move-the-shoulder, text</extracomment>
        <translation>Setzen Sie sich an einen Tisch, und legen Sie die Hand auf ein Tuch. Schieben Sie sie so weit nach vorne, wie es leicht geht. Ziehen Sie sie wieder zurück. Tun Sie das langsam, ein paar Mal.</translation>
    </message>
    <message>
        <source>Stop at a sharp pain, or if the shoulder seems to slip out.</source>
        <extracomment>move-the-shoulder, stop</extracomment>
        <translation>Hören Sie auf bei stechendem Schmerz oder wenn die Schulter herauszuspringen scheint.</translation>
    </message>
    <message>
        <source>Move your elbow, wrist and hand</source>
        <extracomment>move-the-arm-and-hand, title</extracomment>
        <translation>Bewegen Sie Ellenbogen, Handgelenk und Hand</translation>
    </message>
    <message>
        <source>Bend your elbow and straighten it. Turn your palm up, then down. Make a soft fist, then spread your fingers wide. Do each of these slowly, a few times.</source>
        <extracomment>move-the-arm-and-hand, text</extracomment>
        <translation>Beugen Sie den Ellenbogen, und strecken Sie ihn. Drehen Sie die Handfläche nach oben, dann nach unten. Machen Sie eine lockere Faust, und spreizen Sie dann die Finger weit. Tun Sie alles langsam, ein paar Mal.</translation>
    </message>
    <message>
        <source>Stop if your hand tingles, turns pale or blue, or hurts more.</source>
        <extracomment>move-the-arm-and-hand, stop</extracomment>
        <translation>Hören Sie auf, wenn die Hand kribbelt, blass oder blau wird oder mehr wehtut.</translation>
    </message>
    <message>
        <source>Ease your jaw</source>
        <extracomment>ease-the-jaw, title</extracomment>
        <translation>Entlasten Sie den Kiefer</translation>
    </message>
    <message>
        <source>Let your teeth rest apart, with your lips closed. Put the tip of your tongue behind your top front teeth. Open and close your mouth slowly, in small moves. Eat soft food while it is sore.</source>
        <extracomment>ease-the-jaw, text</extracomment>
        <translation>Lassen Sie die Zähne auseinander, die Lippen geschlossen. Legen Sie die Zungenspitze hinter die oberen Vorderzähne. Öffnen und schließen Sie den Mund langsam, mit kleinen Bewegungen. Essen Sie Weiches, solange es wehtut.</translation>
    </message>
    <message>
        <source>Stop if it hurts more, and see a doctor today if the jaw stays locked.</source>
        <extracomment>ease-the-jaw, stop</extracomment>
        <translation>Hören Sie auf, wenn es mehr wehtut. Bleibt der Kiefer blockiert, gehen Sie heute noch zum Arzt oder zur Ärztin.</translation>
    </message>
    <message>
        <source>Stretch your calf</source>
        <extracomment>stretch-the-calf, title</extracomment>
        <translation>Dehnen Sie die Wade</translation>
    </message>
    <message>
        <source>Stand with both hands on a wall. Put one foot back and keep its heel on the floor. Bend the front knee till you feel a soft pull. Hold it for a few slow breaths, then change legs.</source>
        <extracomment>stretch-the-calf, text</extracomment>
        <translation>Stellen Sie sich hin, beide Hände an der Wand. Stellen Sie einen Fuß nach hinten, die Ferse bleibt am Boden. Beugen Sie das vordere Knie, bis Sie ein sanftes Ziehen spüren. Halten Sie das ein paar langsame Atemzüge lang, und wechseln Sie dann das Bein.</translation>
    </message>
    <message>
        <source>Do not stretch a newly sore, hot or swollen calf: see a doctor today.</source>
        <extracomment>stretch-the-calf, stop</extracomment>
        <translation>Dehnen Sie keine Wade, die neu schmerzt, heiß oder geschwollen ist. Gehen Sie damit heute noch zum Arzt oder zur Ärztin.</translation>
    </message>
    <message>
        <source>Stretch the front of your hip</source>
        <extracomment>stretch-front-of-hip, title</extracomment>
        <translation>Dehnen Sie die Vorderseite der Hüfte</translation>
    </message>
    <message>
        <source>Hold on to a table and take a long step to the front. Keep your back heel up and your chest tall. Bend the front knee till you feel a soft pull in the back hip. Hold it for a few slow breaths, then change legs.</source>
        <extracomment>stretch-front-of-hip, text</extracomment>
        <translation>Halten Sie sich an einem Tisch fest, und machen Sie einen großen Schritt nach vorne. Die hintere Ferse bleibt oben, die Brust aufrecht. Beugen Sie das vordere Knie. Sie sollen an der Hüfte des hinteren Beins ein sanftes Ziehen spüren. Halten Sie das ein paar langsame Atemzüge lang, und wechseln Sie dann das Bein.</translation>
    </message>
    <message>
        <source>Stop if your groin pinches, your back hurts, or you do not feel safe.</source>
        <extracomment>stretch-front-of-hip, stop</extracomment>
        <translation>Hören Sie auf, wenn die Leiste zwickt, der Rücken wehtut oder Sie sich unsicher fühlen.</translation>
    </message>
    <message>
        <source>Stretch the back of your thigh</source>
        <extracomment>stretch-back-of-thigh, title</extracomment>
        <translation>Dehnen Sie die Rückseite des Oberschenkels</translation>
    </message>
    <message>
        <source>Sit near the front of a firm chair. Put one heel out in front, with the knee almost straight. Lean from your hips with a long back till you feel a soft pull. Hold it for about 30 seconds, then change legs.</source>
        <extracomment>stretch-back-of-thigh, text</extracomment>
        <translation>Setzen Sie sich vorne auf einen festen Stuhl. Strecken Sie eine Ferse nach vorne, das Knie fast gerade. Beugen Sie sich mit langem Rücken aus der Hüfte vor, bis es sanft zieht. Halten Sie das etwa 30 Sekunden, und wechseln Sie dann das Bein.</translation>
    </message>
    <message>
        <source>Stop if your leg or foot tingles, or if pain shoots down the leg.</source>
        <extracomment>stretch-back-of-thigh, stop</extracomment>
        <translation>Hören Sie auf, wenn Bein oder Fuß kribbelt oder Schmerz ins Bein schießt.</translation>
    </message>
    <message>
        <source>Stretch your chest</source>
        <extracomment>stretch-the-chest, title</extracomment>
        <translation>Dehnen Sie die Brust</translation>
    </message>
    <message>
        <source>Stand in a doorway and lay one forearm on the frame. Keep your elbow a bit below your shoulder. Turn your body slowly till you feel a soft pull in the chest. Hold it for a few slow breaths, then change sides.</source>
        <extracomment>stretch-the-chest, text</extracomment>
        <translation>Stellen Sie sich in eine Tür, und legen Sie einen Unterarm an den Rahmen. Der Ellenbogen bleibt etwas tiefer als die Schulter. Drehen Sie den Körper langsam, bis Sie in der Brust ein sanftes Ziehen spüren. Halten Sie das ein paar langsame Atemzüge lang, und wechseln Sie dann die Seite.</translation>
    </message>
    <message>
        <source>Stop if your arm tingles, and call for help if your chest feels heavy.</source>
        <extracomment>stretch-the-chest, stop</extracomment>
        <translation>Hören Sie auf, wenn der Arm kribbelt. Rufen Sie Hilfe, wenn sich die Brust schwer anfühlt.</translation>
    </message>
    <message>
        <source>Stretch your side</source>
        <extracomment>stretch-the-side, title</extracomment>
        <translation>Dehnen Sie Ihre Seite</translation>
    </message>
    <message>
        <source>Sit on a firm chair and hold the seat with one hand. Reach the other arm up and lean a little toward the first hand. Take a few slow breaths there. Come back slowly and change sides.</source>
        <extracomment>stretch-the-side, text</extracomment>
        <translation>Setzen Sie sich auf einen festen Stuhl, und fassen Sie mit einer Hand den Sitz. Strecken Sie den anderen Arm hoch, und neigen Sie sich etwas zur Hand am Sitz. Machen Sie dort ein paar langsame Atemzüge. Kommen Sie langsam zurück, und wechseln Sie die Seite.</translation>
    </message>
    <message>
        <source>Stop at a sharp pain, or if it is hard to breathe.</source>
        <extracomment>stretch-the-side, stop</extracomment>
        <translation>Hören Sie auf bei stechendem Schmerz oder wenn das Atmen schwerfällt.</translation>
    </message>
    <message>
        <source>Carry a light bag</source>
        <extracomment>carry-light, title</extracomment>
        <translation>Tragen Sie eine leichte Tasche</translation>
    </message>
    <message>
        <source>Take out what you do not need. Wear a bag with two straps on both shoulders. With one strap or one hand, change sides often. Use wheels for a big load.</source>
        <extracomment>carry-light, text</extracomment>
        <translation>Nehmen Sie heraus, was Sie nicht brauchen. Tragen Sie eine Tasche mit zwei Riemen auf beiden Schultern. Mit einem Riemen oder einer Hand: Wechseln Sie oft die Seite. Nehmen Sie für große Lasten etwas mit Rädern.</translation>
    </message>
    <message>
        <source>Put the bag down if your arm or hand tingles or aches.</source>
        <extracomment>carry-light, stop</extracomment>
        <translation>Stellen Sie die Tasche ab, wenn Arm oder Hand kribbelt oder schmerzt.</translation>
    </message>
    <message>
        <source>Set up your desk</source>
        <extracomment>set-up-your-desk, title</extracomment>
        <translation>Richten Sie Ihren Schreibtisch ein</translation>
    </message>
    <message>
        <source>Let your feet rest on the floor or on a box. Have the screen in front of you, with its top near eye height. Keep keys and mouse close, so that your arms can hang loose. Then change how you sit now and then.</source>
        <extracomment>set-up-your-desk, text</extracomment>
        <translation>Stellen Sie die Füße auf den Boden oder auf eine Kiste. Der Bildschirm steht vor Ihnen, die Oberkante etwa in Augenhöhe. Tastatur und Maus liegen nah, damit die Arme locker hängen können. Ändern Sie dann ab und zu, wie Sie sitzen.</translation>
    </message>
    <message>
        <source>If it feels worse after a few days, change it back.</source>
        <extracomment>set-up-your-desk, stop</extracomment>
        <translation>Wenn es sich nach ein paar Tagen schlechter anfühlt, ändern Sie es wieder zurück.</translation>
    </message>
    <message>
        <source>Hold your phone with ease</source>
        <extracomment>use-the-phone-with-ease, title</extracomment>
        <translation>Halten Sie Ihr Handy bequem</translation>
    </message>
    <message>
        <source>Lift the phone, so that you need not look down for long. Use both hands, or change hands often. Do not pinch it between ear and shoulder. Look up and let your arms drop now and then.</source>
        <extracomment>use-the-phone-with-ease, text</extracomment>
        <translation>Heben Sie das Handy höher, damit Sie nicht lange nach unten schauen müssen. Nehmen Sie beide Hände, oder wechseln Sie oft die Hand. Klemmen Sie es nicht zwischen Ohr und Schulter. Schauen Sie ab und zu auf, und lassen Sie die Arme sinken.</translation>
    </message>
    <message>
        <source>Put it down when your neck, thumb or eyes start to ache.</source>
        <extracomment>use-the-phone-with-ease, stop</extracomment>
        <translation>Legen Sie es weg, wenn Nacken, Daumen oder Augen zu schmerzen beginnen.</translation>
    </message>
    <message>
        <source>Back to sport, step by step</source>
        <extracomment>back-to-sport, title</extracomment>
        <translation>Schritt für Schritt zurück zum Sport</translation>
    </message>
    <message>
        <source>Go easy for a few days. Then start with less than you did before. If you feel fine the next day, add a little. If not, go back one step.</source>
        <extracomment>back-to-sport, text</extracomment>
        <translation>Schonen Sie sich ein paar Tage. Beginnen Sie dann mit weniger als vorher. Geht es Ihnen am nächsten Tag gut, machen Sie etwas mehr. Wenn nicht, gehen Sie einen Schritt zurück.</translation>
    </message>
    <message>
        <source>Stop at a sharp pain, chest pain, or if you feel faint.</source>
        <extracomment>back-to-sport, stop</extracomment>
        <translation>Hören Sie auf bei stechendem Schmerz, bei Brustschmerz oder wenn Sie fast ohnmächtig werden.</translation>
    </message>
    <message>
        <source>Keep a short pain diary</source>
        <extracomment>keep-a-pain-diary, title</extracomment>
        <translation>Führen Sie ein kurzes Schmerztagebuch</translation>
    </message>
    <message>
        <source>Once a day, write down how much it hurts, from 0 to 10. 0 is no pain, and 10 is the worst you can think of. Add what you did and what helped. Bring it with you next time.</source>
        <extracomment>keep-a-pain-diary, text</extracomment>
        <translation>Schreiben Sie einmal am Tag auf, wie weh es tut, von 0 bis 10. 0 ist kein Schmerz, 10 ist der schlimmste, den Sie sich vorstellen können. Schreiben Sie dazu, was Sie getan haben und was geholfen hat. Bringen Sie es nächstes Mal mit.</translation>
    </message>
    <message>
        <source>Stop if it makes you think of the pain more.</source>
        <extracomment>keep-a-pain-diary, stop</extracomment>
        <translation>Hören Sie auf, wenn Sie dadurch mehr an den Schmerz denken.</translation>
    </message>
    <message>
        <source>Care for your feet</source>
        <extracomment>care-for-your-feet, title</extracomment>
        <translation>Pflegen Sie Ihre Füße</translation>
    </message>
    <message>
        <source>Look at both feet each day, also from below and between the toes. Wash them and dry them well. Wear shoes with room for your toes. Feel in the shoe for stones before you put it on.</source>
        <extracomment>care-for-your-feet, text</extracomment>
        <translation>Sehen Sie sich jeden Tag beide Füße an, auch von unten und zwischen den Zehen. Waschen Sie sie, und trocknen Sie sie gut ab. Tragen Sie Schuhe mit Platz für die Zehen. Tasten Sie vor dem Anziehen im Schuh nach Steinen.</translation>
    </message>
    <message>
        <source>See a doctor today for a sore, a black spot, or a hot, swollen foot.</source>
        <extracomment>care-for-your-feet, stop</extracomment>
        <translation>Haben Sie eine Wunde, einen schwarzen Fleck oder einen heißen, geschwollenen Fuß? Gehen Sie damit heute noch zum Arzt oder zur Ärztin.</translation>
    </message>
    <message>
        <source>Press with a soft ball</source>
        <extracomment>press-with-a-ball, title</extracomment>
        <translation>Drücken Sie mit einem weichen Ball</translation>
    </message>
    <message>
        <source>Put a soft ball between a sore muscle and a wall, or below your foot. Lean in till it is firm but fine, for a few slow breaths. Keep off bone, belly, throat, groin, armpit and the back of the knee. Skip spots that we worked on today.</source>
        <extracomment>press-with-a-ball, text</extracomment>
        <translation>Legen Sie einen weichen Ball zwischen Wand und schmerzenden Muskel oder unter den Fuß. Lehnen Sie sich dagegen, bis es fest, aber angenehm ist. Bleiben Sie so ein paar langsame Atemzüge lang. Meiden Sie Knochen, Bauch, Kehle, Leiste, Achsel und Kniekehle. Lassen Sie Stellen aus, die wir heute behandelt haben.</translation>
    </message>
    <message>
        <source>Stop if you feel a beat, a tingle, or a pain that does not ease.</source>
        <extracomment>press-with-a-ball, stop</extracomment>
        <translation>Hören Sie auf, wenn Sie Pochen, Kribbeln oder Schmerz spüren, der nicht nachlässt.</translation>
    </message>
    <message>
        <source>Your skin may be pink and warm for some hours. You may be a bit sore or tired for a day or two.</source>
        <extracomment>after gliding</extracomment>
        <translation>Ihre Haut kann einige Stunden rosa und warm sein. Ein oder zwei Tage kann es etwas wehtun, oder Sie sind etwas müde.</translation>
    </message>
    <message>
        <source>Your skin may be red and sore to touch for a day or two. You may get a small bruise. It fades in a week or two.</source>
        <extracomment>after skin-rolling</extracomment>
        <translation>Ihre Haut kann ein oder zwei Tage rot sein und bei Berührung wehtun. Vielleicht bekommen Sie einen kleinen blauen Fleck. Er verblasst in ein bis zwei Wochen.</translation>
    </message>
    <message>
        <source>The spot may ache for a day or two, as after hard work. You may get a bruise. It fades in a week or two. Do not press the spot again for two days.</source>
        <extracomment>after sustained-pressure</extracomment>
        <translation>Die Stelle kann ein oder zwei Tage schmerzen, wie nach schwerer Arbeit. Vielleicht bekommen Sie einen blauen Fleck. Er verblasst in ein bis zwei Wochen. Drücken Sie zwei Tage lang nicht noch einmal auf die Stelle.</translation>
    </message>
    <message>
        <source>The place may be red for some hours and sore for a day or two. Go easy on it for that time.</source>
        <extracomment>after cross-fibre</extracomment>
        <translation>Die Stelle kann einige Stunden rot sein und ein oder zwei Tage wehtun. Schonen Sie sie in dieser Zeit.</translation>
    </message>
    <message>
        <source>The muscle may ache for a day or two, as after hard work. Move it softly, and do not stretch it hard.</source>
        <extracomment>after hold-and-lengthen</extracomment>
        <translation>Der Muskel kann ein oder zwei Tage schmerzen, wie nach schwerer Arbeit. Bewegen Sie ihn sanft, und dehnen Sie ihn nicht stark.</translation>
    </message>
    <message>
        <source>Your skin will be red for some hours. You may get small red dots or a bruise. These mostly fade in a week, but some take two. Call us if the skin breaks or blisters.</source>
        <extracomment>after instrument</extracomment>
        <translation>Ihre Haut wird einige Stunden rot sein. Vielleicht bekommen Sie kleine rote Punkte oder einen blauen Fleck. Meist verblassen sie in einer Woche, manche brauchen zwei. Rufen Sie uns an, wenn die Haut aufreißt oder Blasen bekommt.</translation>
    </message>
    <message>
        <source>You must expect round marks that look like bruises. Most fade in 3 to 7 days, but some take 2 to 3 weeks. The skin may be sore. Call us if it blisters.</source>
        <extracomment>after suction</extracomment>
        <translation>Sie müssen mit runden Spuren rechnen, die wie blaue Flecken aussehen. Die meisten verblassen in 3 bis 7 Tagen, manche brauchen 2 bis 3 Wochen. Die Haut kann wehtun. Rufen Sie uns an, wenn sie Blasen bekommt.</translation>
    </message>
    <message>
        <source>Your skin will be red for some hours. You may get marks that look like bruises. Most fade in 3 to 7 days, but some take 2 to 3 weeks. Call us if the skin blisters.</source>
        <extracomment>after gliding-suction</extracomment>
        <translation>Ihre Haut wird einige Stunden rot sein. Vielleicht bekommen Sie Spuren, die wie blaue Flecken aussehen. Die meisten verblassen in 3 bis 7 Tagen, manche brauchen 2 bis 3 Wochen. Rufen Sie uns an, wenn die Haut Blasen bekommt.</translation>
    </message>
    <message>
        <source>You may be sore, stiff or tired, or have a mild headache. Most of this starts within a day and is gone within 3 days. To be faint, numb or weak is not part of it. See when to call.</source>
        <extracomment>after mobilising</extracomment>
        <translation>Es kann wehtun, Sie können steif oder müde sein oder leichte Kopfschmerzen haben. Das meiste beginnt innerhalb eines Tages und ist innerhalb von 3 Tagen vorbei. Sich ohnmächtig, taub oder schwach zu fühlen, gehört nicht dazu. Lesen Sie, wann Sie anrufen sollen.</translation>
    </message>
    <message>
        <source>You may move with more ease for a while. The muscle may be sore for a day or two.</source>
        <extracomment>after stretching</extracomment>
        <translation>Vielleicht bewegen Sie sich eine Zeit lang leichter. Der Muskel kann ein oder zwei Tage wehtun.</translation>
    </message>
    <message>
        <source>You may feel no more than a mild ache for a day or two. Some people are a bit tired that day.</source>
        <extracomment>after held-ease</extracomment>
        <translation>Vielleicht spüren Sie nicht mehr als einen leichten Schmerz für ein oder zwei Tage. Manche Menschen sind an dem Tag etwas müde.</translation>
    </message>
    <message>
        <source>The muscle may ache for a day or two. You may get a bruise. It fades in a week or two. If it swells or aches badly, or your water turns brown, see a doctor today.</source>
        <extracomment>after powered-device</extracomment>
        <translation>Der Muskel kann ein oder zwei Tage schmerzen. Vielleicht bekommen Sie einen blauen Fleck. Er verblasst in ein bis zwei Wochen. Schwillt der Muskel an, schmerzt er stark, oder wird Ihr Urin braun? Gehen Sie damit heute noch zum Arzt oder zur Ärztin.</translation>
    </message>
    <message>
        <source>The tape may stay on as long as we told you. Pat it dry after you wash. Take it off at once if the skin itches, burns or blisters. Peel it slowly, with one hand on the skin.</source>
        <extracomment>after taping</extracomment>
        <translation>Das Tape darf so lange bleiben, wie wir es Ihnen gesagt haben. Tupfen Sie es nach dem Waschen trocken. Nehmen Sie es sofort ab, wenn die Haut juckt, brennt oder Blasen bekommt. Ziehen Sie es langsam ab, mit einer Hand auf der Haut.</translation>
    </message>
    <message>
        <source>You are newly numb between the legs, or cannot pass or hold water or stool.</source>
        <extracomment>when to call: new-numbness-between-legs</extracomment>
        <translation>Sie haben neuerdings ein taubes Gefühl zwischen den Beinen. Oder Sie können Urin oder Stuhl nicht mehr entleeren oder nicht mehr halten.</translation>
    </message>
    <message>
        <source>Both legs get weak or numb, or pain starts to shoot down both.</source>
        <extracomment>when to call: both-legs</extracomment>
        <translation>Beide Beine werden schwach oder taub, oder Schmerz beginnt, in beide Beine zu schießen.</translation>
    </message>
    <message>
        <source>Your face droops, or an arm or leg goes weak or numb all at once. You newly cannot speak, see, swallow or walk well.</source>
        <extracomment>when to call: face-arm-speech-sight</extracomment>
        <translation>Ihr Gesicht hängt herunter, oder ein Arm oder Bein wird plötzlich schwach oder taub. Sie können neuerdings nicht gut sprechen, sehen, schlucken oder gehen.</translation>
    </message>
    <message>
        <source>A very bad headache hits you all at once. Or it comes with a fever and a stiff neck.</source>
        <extracomment>when to call: sudden-bad-headache</extracomment>
        <translation>Sie bekommen ganz plötzlich sehr starke Kopfschmerzen. Oder sie kommen mit Fieber und steifem Nacken.</translation>
    </message>
    <message>
        <source>You have pain or weight in your chest, or you cannot get your breath. A tearing pain starts in your chest, back or belly.</source>
        <extracomment>when to call: chest-or-breath</extracomment>
        <translation>Sie haben Schmerzen oder Druck in der Brust, oder Sie bekommen nicht richtig Luft. In Brust, Rücken oder Bauch beginnt ein reißender Schmerz.</translation>
    </message>
    <message>
        <source>An arm or leg turns cold, pale or blue. Or it is swollen hard and hurts very badly.</source>
        <extracomment>when to call: cold-or-hard-limb</extracomment>
        <translation>Ein Arm oder Bein wird kalt, blass oder blau. Oder Arm oder Bein ist hart geschwollen und tut sehr weh.</translation>
    </message>
    <message>
        <source>One arm or leg is newly swollen, hot or sore. If you cannot get your breath too, call the emergency number.</source>
        <extracomment>when to call: swollen-limb</extracomment>
        <translation>Ein Arm oder Bein ist neu geschwollen, heiß oder schmerzhaft. Wenn Sie außerdem nicht richtig Luft bekommen, wählen Sie den örtlichen Notruf.</translation>
    </message>
    <message>
        <source>An arm, hand, leg or foot gets weaker or more numb day by day.</source>
        <extracomment>when to call: weaker-limb</extracomment>
        <translation>Ein Arm, eine Hand, ein Bein oder ein Fuß wird täglich schwächer oder tauber.</translation>
    </message>
    <message>
        <source>You have a fever or chills, or a joint is hot, red and swollen. If you have both, call the emergency number.</source>
        <extracomment>when to call: fever-or-hot-joint</extracomment>
        <translation>Sie haben Fieber, Frösteln oder Schüttelfrost. Oder ein Gelenk ist heiß, rot und geschwollen. Wenn beides zutrifft, wählen Sie den örtlichen Notruf.</translation>
    </message>
    <message>
        <source>You have neck pain or a headache like none before, or new dizzy spells.</source>
        <extracomment>when to call: new-neck-or-head-pain</extracomment>
        <translation>Sie haben Schmerzen an Nacken, Hals oder Kopf wie nie zuvor. Oder Sie haben neue Schwindelanfälle.</translation>
    </message>
    <message>
        <source>A bruise grows, or you take a blood thinner and have new deep pain.</source>
        <extracomment>when to call: bruise-grows</extracomment>
        <translation>Ein blauer Fleck wird größer. Oder Sie nehmen einen Blutverdünner und haben neue, tiefe Schmerzen.</translation>
    </message>
    <message>
        <source>You feel worse, or are sore for longer than we told you. Call us too if you are not sure.</source>
        <extracomment>when to call: worse-or-too-long</extracomment>
        <translation>Es geht Ihnen schlechter, oder die Schmerzen dauern länger, als wir gesagt haben. Rufen Sie uns auch an, wenn Sie unsicher sind.</translation>
    </message>
</context>
<context>
    <name>movements</name>
    <message>
        <source>opening your mouth</source>
        <extracomment>jaw-opening</extracomment>
        <translation>Öffnen des Mundes</translation>
    </message>
    <message>
        <source>moving your jaw to the front</source>
        <extracomment>jaw-protrusion</extracomment>
        <translation>Vorschieben des Unterkiefers</translation>
    </message>
    <message>
        <source>moving your jaw to the side</source>
        <extracomment>jaw-side-glide</extracomment>
        <translation>Bewegen des Unterkiefers zur Seite</translation>
    </message>
    <message>
        <source>bending your head to the front</source>
        <extracomment>neck-flexion</extracomment>
        <translation>Beugen des Kopfes nach vorne</translation>
    </message>
    <message>
        <source>bending your head to the back</source>
        <extracomment>neck-extension</extracomment>
        <translation>Beugen des Kopfes nach hinten</translation>
    </message>
    <message>
        <source>bending your head to the side</source>
        <extracomment>neck-side-bending</extracomment>
        <translation>Neigen des Kopfes zur Seite</translation>
    </message>
    <message>
        <source>turning your head</source>
        <extracomment>neck-rotation</extracomment>
        <translation>Drehen des Kopfes</translation>
    </message>
    <message>
        <source>turning your head, chin down</source>
        <extracomment>neck-rotation-flexed</extracomment>
        <translation>Drehen des Kopfes mit gesenktem Kinn</translation>
    </message>
    <message>
        <source>lifting your arm to the front</source>
        <extracomment>shoulder-flexion</extracomment>
        <translation>Heben des Arms nach vorne</translation>
    </message>
    <message>
        <source>moving your arm to the back</source>
        <extracomment>shoulder-extension</extracomment>
        <translation>Bewegen des Arms nach hinten</translation>
    </message>
    <message>
        <source>lifting your arm to the side</source>
        <extracomment>shoulder-abduction</extracomment>
        <translation>Heben des Arms zur Seite</translation>
    </message>
    <message>
        <source>lifting your arm to the side, shoulder blade held</source>
        <extracomment>shoulder-abduction-blade-held</extracomment>
        <translation>Heben des Arms zur Seite bei gehaltenem Schulterblatt</translation>
    </message>
    <message>
        <source>turning your arm out, elbow at your side</source>
        <extracomment>shoulder-external-rotation-at-side</extracomment>
        <translation>Drehen des Arms nach außen, Ellenbogen am Körper</translation>
    </message>
    <message>
        <source>moving your arm across your chest</source>
        <extracomment>shoulder-horizontal-adduction</extracomment>
        <translation>Führen des Arms quer vor der Brust</translation>
    </message>
    <message>
        <source>reaching up your back</source>
        <extracomment>hand-behind-back</extracomment>
        <translation>Hochgreifen am Rücken</translation>
    </message>
    <message>
        <source>turning your arm out</source>
        <extracomment>shoulder-external-rotation</extracomment>
        <translation>Drehen des Arms nach außen</translation>
    </message>
    <message>
        <source>turning your arm in</source>
        <extracomment>shoulder-internal-rotation</extracomment>
        <translation>Drehen des Arms nach innen</translation>
    </message>
    <message>
        <source>bending your elbow</source>
        <extracomment>elbow-flexion</extracomment>
        <translation>Beugen des Ellenbogens</translation>
    </message>
    <message>
        <source>making your elbow straight</source>
        <extracomment>elbow-extension</extracomment>
        <translation>Strecken des Ellenbogens</translation>
    </message>
    <message>
        <source>turning your palm down</source>
        <extracomment>forearm-pronation</extracomment>
        <translation>Drehen der Handfläche nach unten</translation>
    </message>
    <message>
        <source>turning your palm up</source>
        <extracomment>forearm-supination</extracomment>
        <translation>Drehen der Handfläche nach oben</translation>
    </message>
    <message>
        <source>bending your wrist</source>
        <extracomment>wrist-flexion</extracomment>
        <translation>Beugen des Handgelenks</translation>
    </message>
    <message>
        <source>lifting your hand at the wrist</source>
        <extracomment>wrist-extension</extracomment>
        <translation>Heben der Hand im Handgelenk</translation>
    </message>
    <message>
        <source>moving your hand to the thumb side</source>
        <extracomment>wrist-radial-deviation</extracomment>
        <translation>Bewegen der Hand zur Daumenseite</translation>
    </message>
    <message>
        <source>moving your hand to the small finger side</source>
        <extracomment>wrist-ulnar-deviation</extracomment>
        <translation>Bewegen der Hand zur Kleinfingerseite</translation>
    </message>
    <message>
        <source>bending your finger at the knuckle</source>
        <extracomment>finger-flexion</extracomment>
        <translation>Beugen des Fingers im Grundgelenk</translation>
    </message>
    <message>
        <source>making your finger straight at the knuckle</source>
        <extracomment>finger-extension</extracomment>
        <translation>Strecken des Fingers im Grundgelenk</translation>
    </message>
    <message>
        <source>bending your finger in the middle</source>
        <extracomment>finger-middle-joint-flexion</extracomment>
        <translation>Beugen des Fingers im Mittelgelenk</translation>
    </message>
    <message>
        <source>making your finger straight in the middle</source>
        <extracomment>finger-middle-joint-extension</extracomment>
        <translation>Strecken des Fingers im Mittelgelenk</translation>
    </message>
    <message>
        <source>gap between your fingertip and your palm</source>
        <extracomment>finger-curl-distance</extracomment>
        <translation>Abstand zwischen Fingerspitze und Handfläche</translation>
    </message>
    <message>
        <source>moving your thumb out</source>
        <extracomment>thumb-abduction</extracomment>
        <translation>Abspreizen des Daumens</translation>
    </message>
    <message>
        <source>bending your thumb</source>
        <extracomment>thumb-flexion</extracomment>
        <translation>Beugen des Daumens</translation>
    </message>
    <message>
        <source>making your thumb straight</source>
        <extracomment>thumb-extension</extracomment>
        <translation>Strecken des Daumens</translation>
    </message>
    <message>
        <source>gap between your thumb and your small finger</source>
        <extracomment>thumb-opposition</extracomment>
        <translation>Abstand zwischen Daumen und kleinem Finger</translation>
    </message>
    <message>
        <source>how wide your low ribs move</source>
        <extracomment>chest-expansion</extracomment>
        <translation>Weitung der unteren Rippen</translation>
    </message>
    <message>
        <source>how wide your high ribs move</source>
        <extracomment>chest-expansion-upper</extracomment>
        <translation>Weitung der oberen Rippen</translation>
    </message>
    <message>
        <source>turning your upper body</source>
        <extracomment>trunk-rotation</extracomment>
        <translation>Drehen des Oberkörpers</translation>
    </message>
    <message>
        <source>bending to the front</source>
        <extracomment>trunk-flexion</extracomment>
        <translation>Beugen nach vorne</translation>
    </message>
    <message>
        <source>bending to the back</source>
        <extracomment>trunk-extension</extracomment>
        <translation>Beugen nach hinten</translation>
    </message>
    <message>
        <source>bending to the side</source>
        <extracomment>trunk-side-bending</extracomment>
        <translation>Beugen zur Seite</translation>
    </message>
    <message>
        <source>sliding your hand down your thigh</source>
        <extracomment>trunk-side-bending-tape</extracomment>
        <translation>Gleiten der Hand am Oberschenkel nach unten</translation>
    </message>
    <message>
        <source>gap between your fingertips and the floor</source>
        <extracomment>fingertip-to-floor</extracomment>
        <translation>Abstand der Fingerspitzen zum Boden</translation>
    </message>
    <message>
        <source>bending your low back</source>
        <extracomment>lumbar-flexion-tape</extracomment>
        <translation>Beugen des unteren Rückens</translation>
    </message>
    <message>
        <source>turning your thigh in, sitting</source>
        <extracomment>hip-internal-rotation-sitting</extracomment>
        <translation>Drehen des Oberschenkels nach innen im Sitzen</translation>
    </message>
    <message>
        <source>turning your thigh out, sitting</source>
        <extracomment>hip-external-rotation-sitting</extracomment>
        <translation>Drehen des Oberschenkels nach außen im Sitzen</translation>
    </message>
    <message>
        <source>lifting your straight leg</source>
        <extracomment>straight-leg-raise</extracomment>
        <translation>Heben des gestreckten Beins</translation>
    </message>
    <message>
        <source>bending your hip</source>
        <extracomment>hip-flexion</extracomment>
        <translation>Beugen der Hüfte</translation>
    </message>
    <message>
        <source>moving your leg out</source>
        <extracomment>hip-abduction</extracomment>
        <translation>Bewegen des Beins nach außen</translation>
    </message>
    <message>
        <source>moving your leg in</source>
        <extracomment>hip-adduction</extracomment>
        <translation>Bewegen des Beins nach innen</translation>
    </message>
    <message>
        <source>turning your thigh in, hip bent</source>
        <extracomment>hip-internal-rotation-bent</extracomment>
        <translation>Drehen des Oberschenkels nach innen bei gebeugter Hüfte</translation>
    </message>
    <message>
        <source>turning your thigh out, hip bent</source>
        <extracomment>hip-external-rotation-bent</extracomment>
        <translation>Drehen des Oberschenkels nach außen bei gebeugter Hüfte</translation>
    </message>
    <message>
        <source>turning your leg in, on your back</source>
        <extracomment>hip-internal-rotation-on-back</extracomment>
        <translation>Drehen des Beins nach innen in Rückenlage</translation>
    </message>
    <message>
        <source>turning your leg out, on your back</source>
        <extracomment>hip-external-rotation-on-back</extracomment>
        <translation>Drehen des Beins nach außen in Rückenlage</translation>
    </message>
    <message>
        <source>turning your leg in</source>
        <extracomment>hip-internal-rotation</extracomment>
        <translation>Drehen des Beins nach innen</translation>
    </message>
    <message>
        <source>turning your leg out</source>
        <extracomment>hip-external-rotation</extracomment>
        <translation>Drehen des Beins nach außen</translation>
    </message>
    <message>
        <source>moving your leg to the back</source>
        <extracomment>hip-extension</extracomment>
        <translation>Bewegen des Beins nach hinten</translation>
    </message>
    <message>
        <source>bending your knee</source>
        <extracomment>knee-flexion</extracomment>
        <translation>Beugen des Knies</translation>
    </message>
    <message>
        <source>making your knee straight</source>
        <extracomment>knee-extension</extracomment>
        <translation>Strecken des Knies</translation>
    </message>
    <message>
        <source>making your knee straight, hip bent</source>
        <extracomment>knee-extension-hip-bent</extracomment>
        <translation>Strecken des Knies bei gebeugter Hüfte</translation>
    </message>
    <message>
        <source>bending your knee, face down</source>
        <extracomment>knee-flexion-face-down</extracomment>
        <translation>Beugen des Knies in Bauchlage</translation>
    </message>
    <message>
        <source>moving your knee over your foot</source>
        <extracomment>weight-bearing-lunge</extracomment>
        <translation>Bewegen des Knies über den Fuß</translation>
    </message>
    <message>
        <source>how far your toe is from the wall</source>
        <extracomment>weight-bearing-lunge-distance</extracomment>
        <translation>Abstand zwischen Zehe und Wand</translation>
    </message>
    <message>
        <source>lifting the front of your foot</source>
        <extracomment>ankle-dorsiflexion</extracomment>
        <translation>Heben des Vorfußes</translation>
    </message>
    <message>
        <source>pointing your foot down</source>
        <extracomment>ankle-plantarflexion</extracomment>
        <translation>Strecken des Fußes nach unten</translation>
    </message>
    <message>
        <source>turning your sole in</source>
        <extracomment>ankle-inversion</extracomment>
        <translation>Drehen der Fußsohle nach innen</translation>
    </message>
    <message>
        <source>turning your sole out</source>
        <extracomment>ankle-eversion</extracomment>
        <translation>Drehen der Fußsohle nach außen</translation>
    </message>
    <message>
        <source>lifting your big toe</source>
        <extracomment>big-toe-extension</extracomment>
        <translation>Heben der großen Zehe</translation>
    </message>
    <message>
        <source>bending your big toe down</source>
        <extracomment>big-toe-flexion</extracomment>
        <translation>Beugen der großen Zehe nach unten</translation>
    </message>
</context>
<context>
    <name>patient-texts</name>
    <message>
        <source>Before we start: tell us how you are.</source>
        <extracomment>welcome-title</extracomment>
        <translation>Bevor wir anfangen: Sagen Sie uns, wie es Ihnen geht.</translation>
    </message>
    <message>
        <source>Your answers help us to keep you safe.</source>
        <extracomment>welcome-why</extracomment>
        <translation>Ihre Antworten helfen uns, Sie vor Schaden zu schützen.</translation>
    </message>
    <message>
        <source>You can skip what you do not want to say.</source>
        <extracomment>welcome-skip</extracomment>
        <translation>Was Sie nicht sagen wollen, können Sie auslassen.</translation>
    </message>
    <message>
        <source>Ask us if you need help, big print, or some other language.</source>
        <extracomment>welcome-help</extracomment>
        <translation>Fragen Sie uns, wenn Sie Hilfe, große Schrift oder eine andere Sprache brauchen.</translation>
    </message>
    <message>
        <source>What you tell us goes in your record. We keep it locked.</source>
        <extracomment>welcome-private</extracomment>
        <translation>Was Sie uns sagen, kommt in Ihre Akte. Wir halten sie unter Verschluss.</translation>
    </message>
    <message>
        <source>These pages do not tell you what is wrong. They help us to ask well.</source>
        <extracomment>welcome-limits</extracomment>
        <translation>Diese Seiten sagen nicht, was Ihnen fehlt. Sie helfen uns, gut zu fragen.</translation>
    </message>
    <message>
        <source>Use a dark pen. Bring these pages with you.</source>
        <extracomment>welcome-form-how</extracomment>
        <translation>Nehmen Sie einen dunklen Stift. Bringen Sie diese Seiten mit.</translation>
    </message>
    <message>
        <source>What is your name?</source>
        <extracomment>welcome-form-name</extracomment>
        <translation>Wie heißen Sie?</translation>
    </message>
    <message>
        <source>When were you born?</source>
        <extracomment>welcome-form-born</extracomment>
        <translation>Wann sind Sie geboren?</translation>
    </message>
    <message>
        <source>What is the date today?</source>
        <extracomment>welcome-form-date</extracomment>
        <translation>Welches Datum ist heute?</translation>
    </message>
    <message>
        <source>Who helped you to fill this in?</source>
        <extracomment>welcome-form-helper</extracomment>
        <translation>Wer hat Ihnen beim Ausfüllen geholfen?</translation>
    </message>
    <message>
        <source>How can we reach you?</source>
        <extracomment>welcome-form-reach</extracomment>
        <translation>Wie können wir Sie erreichen?</translation>
    </message>
    <message>
        <source>Whom should we call if you fall ill here?</source>
        <extracomment>welcome-form-tell</extracomment>
        <translation>Wen sollen wir anrufen, wenn es Ihnen hier plötzlich schlecht geht?</translation>
    </message>
    <message>
        <source>Do not wait for your visit if you have one of these now.</source>
        <extracomment>urgent-title</extracomment>
        <translation>Warten Sie nicht auf Ihren Termin, wenn jetzt etwas davon auf Sie zutrifft.</translation>
    </message>
    <message>
        <source>You have pain in the chest, arm or jaw, or you cannot get your breath.</source>
        <extracomment>urgent-chest</extracomment>
        <translation>Sie haben Schmerzen in Brust, Arm oder Kiefer, oder Sie bekommen nicht richtig Luft.</translation>
    </message>
    <message>
        <source>Your face droops, or an arm or leg is weak or numb all at once.</source>
        <extracomment>urgent-face</extracomment>
        <translation>Ihr Gesicht hängt herunter, oder ein Arm oder Bein ist plötzlich schwach oder taub.</translation>
    </message>
    <message>
        <source>You cannot speak, see or swallow well, and that is new.</source>
        <extracomment>urgent-speech</extracomment>
        <translation>Sie können nicht gut sprechen, sehen oder schlucken, und das ist neu.</translation>
    </message>
    <message>
        <source>You have the worst headache of your life.</source>
        <extracomment>urgent-head</extracomment>
        <translation>Sie haben die schlimmsten Kopfschmerzen Ihres Lebens.</translation>
    </message>
    <message>
        <source>You have a new headache with a stiff neck and a fever.</source>
        <extracomment>urgent-head-fever</extracomment>
        <translation>Sie haben neue Kopfschmerzen mit steifem Nacken und Fieber.</translation>
    </message>
    <message>
        <source>A joint is hot or red, and you have a fever.</source>
        <extracomment>urgent-joint</extracomment>
        <translation>Ein Gelenk ist heiß oder rot, und Sie haben Fieber.</translation>
    </message>
    <message>
        <source>You have bad pain in the belly or back, and feel a strong beat there.</source>
        <extracomment>urgent-throb</extracomment>
        <translation>Sie haben schlimme Schmerzen in Bauch oder Rücken und spüren dort ein starkes Pochen.</translation>
    </message>
    <message>
        <source>You are numb between the legs.</source>
        <extracomment>urgent-saddle</extracomment>
        <translation>Sie haben ein taubes Gefühl zwischen den Beinen.</translation>
    </message>
    <message>
        <source>You cannot pass or hold water or stool as before.</source>
        <extracomment>urgent-bladder</extracomment>
        <translation>Sie können Urin oder Stuhl nicht mehr wie vorher entleeren oder halten.</translation>
    </message>
    <message>
        <source>Both legs get weak or numb.</source>
        <extracomment>urgent-legs</extracomment>
        <translation>Beide Beine werden schwach oder taub.</translation>
    </message>
    <message>
        <source>You had a bad fall or crash. Since then you cannot stand, or cannot move your neck.</source>
        <extracomment>urgent-fall</extracomment>
        <translation>Sie sind schwer gestürzt oder hatten einen schweren Unfall. Seitdem können Sie nicht stehen oder den Hals nicht bewegen.</translation>
    </message>
    <message>
        <source>You are pregnant, and have a bad headache or bleeding.</source>
        <extracomment>urgent-pregnant</extracomment>
        <translation>Sie sind schwanger und haben starke Kopfschmerzen oder eine Blutung.</translation>
    </message>
    <message>
        <source>Call your emergency number now. Do not fill in the rest.</source>
        <extracomment>urgent-what-form</extracomment>
        <translation>Wählen Sie jetzt den örtlichen Notruf. Füllen Sie den Rest nicht aus.</translation>
    </message>
    <message>
        <source>See a doctor today if you have one of these.</source>
        <extracomment>today-title</extracomment>
        <translation>Gehen Sie heute noch zum Arzt oder zur Ärztin, wenn etwas davon auf Sie zutrifft.</translation>
    </message>
    <message>
        <source>One leg is swollen, hot or sore, and that is new. If you cannot get your breath, call your emergency number.</source>
        <extracomment>today-calf</extracomment>
        <translation>Ein Bein ist geschwollen, heiß oder schmerzt, und das ist neu. Wenn Sie nicht richtig Luft bekommen, wählen Sie den örtlichen Notruf.</translation>
    </message>
    <message>
        <source>A joint is hot, red or swollen, and that is new.</source>
        <extracomment>today-joint</extracomment>
        <translation>Ein Gelenk ist heiß, rot oder geschwollen, und das ist neu.</translation>
    </message>
    <message>
        <source>You are over 50, with a new headache and trouble with your jaw or sight.</source>
        <extracomment>today-head</extracomment>
        <translation>Sie sind über 50 und haben neue Kopfschmerzen. Dazu kommen Probleme mit dem Kiefer oder beim Sehen.</translation>
    </message>
    <message>
        <source>You are pregnant, and your face, hands or legs swell all at once.</source>
        <extracomment>today-pregnant</extracomment>
        <translation>Sie sind schwanger, und Gesicht, Hände oder Beine schwellen plötzlich an.</translation>
    </message>
    <message>
        <source>An arm, hand, leg or foot gets weaker day by day.</source>
        <extracomment>today-weak</extracomment>
        <translation>Ein Arm, eine Hand, ein Bein oder ein Fuß wird von Tag zu Tag schwächer.</translation>
    </message>
    <message>
        <source>Tell us that you have it. We do not work on it before a doctor has seen it.</source>
        <extracomment>today-what</extracomment>
        <translation>Sagen Sie uns, dass Sie das haben. Wir behandeln es nicht, bevor es ärztlich untersucht ist.</translation>
    </message>
    <message>
        <source>I have none of these.</source>
        <extracomment>urgent-none</extracomment>
        <translation>Nein, nichts davon trifft auf mich zu.</translation>
    </message>
    <message>
        <source>Do you have one of these now?</source>
        <extracomment>urgent-here-title</extracomment>
        <translation>Trifft jetzt etwas davon auf Sie zu?</translation>
    </message>
    <message>
        <source>I have one of these.</source>
        <extracomment>urgent-here-yes</extracomment>
        <translation>Ja, etwas davon trifft auf mich zu.</translation>
    </message>
    <message>
        <source>Please tell your therapist now, before you go on.</source>
        <extracomment>urgent-here-what</extracomment>
        <translation>Sagen Sie es bitte jetzt Ihrer Therapeutin oder Ihrem Therapeuten, bevor Sie weitermachen.</translation>
    </message>
    <message>
        <source>What brings you here today?</source>
        <extracomment>story-title</extracomment>
        <translation>Was führt Sie heute zu uns?</translation>
    </message>
    <message>
        <source>Where does it hurt?</source>
        <extracomment>mark-title</extracomment>
        <translation>Wo tut es weh?</translation>
    </message>
    <message>
        <source>First touch the place on yourself. Then find the same place on the picture.</source>
        <extracomment>mark-touch</extracomment>
        <translation>Berühren Sie zuerst die Stelle an sich selbst. Suchen Sie dann dieselbe Stelle auf dem Bild.</translation>
    </message>
    <message>
        <source>Look for the letters L and R on the picture. L is your LEFT. R is your RIGHT.</source>
        <extracomment>mark-letters</extracomment>
        <translation>Suchen Sie auf dem Bild die Buchstaben L und R. L ist Ihre LINKE Seite. R ist Ihre RECHTE Seite.</translation>
    </message>
    <message>
        <source>Front of your body</source>
        <extracomment>mark-front-title</extracomment>
        <translation>Vorderseite Ihres Körpers</translation>
    </message>
    <message>
        <source>Put your hand on the place on the front of your body. Is it on your LEFT or on your RIGHT?</source>
        <extracomment>mark-front-touch</extracomment>
        <translation>Legen Sie die Hand auf die Stelle vorne an Ihrem Körper. Liegt die Stelle auf Ihrer LINKEN oder auf Ihrer RECHTEN Seite?</translation>
    </message>
    <message>
        <source>The picture looks at you, like a person who faces you. So its LEFT is next to your RIGHT hand. Go by the letters.</source>
        <extracomment>mark-front-faces</extracomment>
        <translation>Das Bild sieht Sie an, wie ein Mensch, der Ihnen gegenübersteht. Darum liegt seine LINKE Seite neben Ihrer RECHTEN Hand. Richten Sie sich nach den Buchstaben.</translation>
    </message>
    <message>
        <source>Back of your body</source>
        <extracomment>mark-back-title</extracomment>
        <translation>Rückseite Ihres Körpers</translation>
    </message>
    <message>
        <source>Reach behind you and touch the place. If you cannot reach it, ask someone to touch it for you.</source>
        <extracomment>mark-back-touch</extracomment>
        <translation>Greifen Sie nach hinten, und berühren Sie die Stelle. Wenn Sie nicht hinkommen, bitten Sie jemanden, das für Sie zu tun.</translation>
    </message>
    <message>
        <source>Here you see the body from behind. Its LEFT is on the same side as yours.</source>
        <extracomment>mark-back-faces</extracomment>
        <translation>Hier sehen Sie den Körper von hinten. Seine LINKE Seite ist auf derselben Seite wie Ihre.</translation>
    </message>
    <message>
        <source>Look at the front and the back. Mark both if it hurts on both.</source>
        <extracomment>mark-both-views</extracomment>
        <translation>Sehen Sie sich die Vorderseite und die Rückseite an. Markieren Sie beide, wenn es auf beiden wehtut.</translation>
    </message>
    <message>
        <source>It hurts on the side of my body.</source>
        <extracomment>mark-sides-open</extracomment>
        <translation>Es tut an der Seite meines Körpers weh.</translation>
    </message>
    <message>
        <source>Sides of your body</source>
        <extracomment>mark-sides-title</extracomment>
        <translation>Seiten Ihres Körpers</translation>
    </message>
    <message>
        <source>Put your hand on the place on the side of your body. Is it your LEFT side or your RIGHT side?</source>
        <extracomment>mark-sides-touch</extracomment>
        <translation>Legen Sie die Hand auf die Stelle an der Seite Ihres Körpers. Ist es Ihre LINKE Seite oder Ihre RECHTE Seite?</translation>
    </message>
    <message>
        <source>One picture shows your RIGHT side. The other shows your LEFT side. Go by the words.</source>
        <extracomment>mark-sides-faces</extracomment>
        <translation>Ein Bild zeigt Ihre RECHTE Seite. Das andere zeigt Ihre LINKE Seite. Richten Sie sich nach den Wörtern.</translation>
    </message>
    <message>
        <source>Draw on all of the place where it hurts, no more and no less.</source>
        <extracomment>mark-draw</extracomment>
        <translation>Malen Sie die ganze Stelle an, die wehtut, nicht mehr und nicht weniger.</translation>
    </message>
    <message>
        <source>Shade all of the place where it hurts, no more and no less.</source>
        <extracomment>mark-draw-form</extracomment>
        <translation>Malen Sie die ganze Stelle aus, die wehtut, nicht mehr und nicht weniger.</translation>
    </message>
    <message>
        <source>Put a ring round the place that is the worst.</source>
        <extracomment>mark-worst-form</extracomment>
        <translation>Machen Sie einen Kreis um die schlimmste Stelle.</translation>
    </message>
    <message>
        <source>Does the pain move from one place to the next? Draw the way it goes.</source>
        <extracomment>mark-spread</extracomment>
        <translation>Wandert der Schmerz von einer Stelle zur nächsten? Zeichnen Sie seinen Weg ein.</translation>
    </message>
    <message>
        <source>Is there a place that we must not touch? Mark it with a cross.</source>
        <extracomment>mark-no-touch</extracomment>
        <translation>Gibt es eine Stelle, die wir nicht berühren dürfen? Machen Sie dort ein Kreuz.</translation>
    </message>
    <message>
        <source>It does not hurt on this side.</source>
        <extracomment>mark-nothing</extracomment>
        <translation>Auf dieser Seite tut nichts weh.</translation>
    </message>
    <message>
        <source>Wipe it off.</source>
        <extracomment>mark-wipe</extracomment>
        <translation>Wegwischen.</translation>
    </message>
    <message>
        <source>Take back the last mark.</source>
        <extracomment>mark-take-back</extracomment>
        <translation>Die letzte Markierung zurücknehmen.</translation>
    </message>
    <message>
        <source>Thin.</source>
        <extracomment>mark-thin</extracomment>
        <translation>Dünn.</translation>
    </message>
    <message>
        <source>Wide.</source>
        <extracomment>mark-wide</extracomment>
        <translation>Breit.</translation>
    </message>
    <message>
        <source>Very wide.</source>
        <extracomment>mark-wider</extracomment>
        <translation>Sehr breit.</translation>
    </message>
    <message>
        <source>How wide is the line?</source>
        <extracomment>mark-line</extracomment>
        <translation>Wie breit soll die Linie sein?</translation>
    </message>
    <message>
        <source>The picture is full. Wipe off a mark that you do not need.</source>
        <extracomment>mark-full</extracomment>
        <translation>Das Bild ist voll. Wischen Sie eine Markierung weg, die Sie nicht brauchen.</translation>
    </message>
    <message>
        <source>You have not marked a place yet. Mark one, or say that nothing hurts.</source>
        <extracomment>mark-empty</extracomment>
        <translation>Sie haben noch keine Stelle markiert. Markieren Sie eine, oder sagen Sie, dass nichts wehtut.</translation>
    </message>
    <message>
        <source>You marked your LEFT {place}.</source>
        <extracomment>side-left</extracomment>
        <translation>Sie haben auf Ihrer LINKEN Seite markiert: {place}.</translation>
    </message>
    <message>
        <source>You marked your RIGHT {place}.</source>
        <extracomment>side-right</extracomment>
        <translation>Sie haben auf Ihrer RECHTEN Seite markiert: {place}.</translation>
    </message>
    <message>
        <source>You marked the middle: your {place}.</source>
        <extracomment>side-middle</extracomment>
        <translation>Sie haben in der Mitte markiert: {place}.</translation>
    </message>
    <message>
        <source>You marked both sides: your LEFT and your RIGHT {place}.</source>
        <extracomment>side-both</extracomment>
        <translation>Sie haben auf beiden Seiten markiert, LINKS und RECHTS: {place}.</translation>
    </message>
    <message>
        <source>It is on the front of your body.</source>
        <extracomment>side-front</extracomment>
        <translation>Die Stelle ist auf der Vorderseite Ihres Körpers.</translation>
    </message>
    <message>
        <source>It is on the back of your body.</source>
        <extracomment>side-back</extracomment>
        <translation>Die Stelle ist auf der Rückseite Ihres Körpers.</translation>
    </message>
    <message>
        <source>It is on the picture of your LEFT side.</source>
        <extracomment>side-view-left</extracomment>
        <translation>Die Stelle ist auf dem Bild Ihrer LINKEN Seite.</translation>
    </message>
    <message>
        <source>It is on the picture of your RIGHT side.</source>
        <extracomment>side-view-right</extracomment>
        <translation>Die Stelle ist auf dem Bild Ihrer RECHTEN Seite.</translation>
    </message>
    <message>
        <source>This mark is not on the body. Please mark the place again.</source>
        <extracomment>side-beside</extracomment>
        <translation>Diese Markierung ist nicht auf dem Körper. Bitte markieren Sie die Stelle noch einmal.</translation>
    </message>
    <message>
        <source>Is this the place?</source>
        <extracomment>side-title</extracomment>
        <translation>Ist das die Stelle?</translation>
    </message>
    <message>
        <source>Touch that place now. Is it the place you mean?</source>
        <extracomment>side-ask</extracomment>
        <translation>Berühren Sie diese Stelle jetzt. Ist es die Stelle, die Sie meinen?</translation>
    </message>
    <message>
        <source>Yes, that is the place.</source>
        <extracomment>side-yes</extracomment>
        <translation>Ja, das ist die Stelle.</translation>
    </message>
    <message>
        <source>No, let me mark it again.</source>
        <extracomment>side-no</extracomment>
        <translation>Nein, ich markiere sie noch einmal.</translation>
    </message>
    <message>
        <source>It is on the other side.</source>
        <extracomment>side-other</extracomment>
        <translation>Es ist auf der anderen Seite.</translation>
    </message>
    <message>
        <source>We will check this with you once more.</source>
        <extracomment>side-checked</extracomment>
        <translation>Wir prüfen das noch einmal mit Ihnen.</translation>
    </message>
    <message>
        <source>Write the side as a word: LEFT, RIGHT, middle or both.</source>
        <extracomment>side-form-write</extracomment>
        <translation>Schreiben Sie die Seite als Wort: LINKS, RECHTS, Mitte oder beide.</translation>
    </message>
    <message>
        <source>Your LEFT</source>
        <extracomment>figure-left</extracomment>
        <translation>Ihre LINKE Seite</translation>
    </message>
    <message>
        <source>Your RIGHT</source>
        <extracomment>figure-right</extracomment>
        <translation>Ihre RECHTE Seite</translation>
    </message>
    <message>
        <source>L</source>
        <extracomment>figure-left-letter</extracomment>
        <translation>L</translation>
    </message>
    <message>
        <source>R</source>
        <extracomment>figure-right-letter</extracomment>
        <translation>R</translation>
    </message>
    <message>
        <source>How does it feel?</source>
        <extracomment>quality-title</extracomment>
        <translation>Wie fühlt es sich an?</translation>
    </message>
    <message>
        <source>Choose all that fit. You can choose more than one.</source>
        <extracomment>quality-how</extracomment>
        <translation>Wählen Sie alles, was passt. Sie können mehr als eines wählen.</translation>
    </message>
    <message>
        <source>Choose the one that fits best.</source>
        <extracomment>quality-one</extracomment>
        <translation>Wählen Sie das, was am besten passt.</translation>
    </message>
    <message>
        <source>It aches.</source>
        <extracomment>quality-aches</extracomment>
        <translation>Der Schmerz ist dumpf.</translation>
    </message>
    <message>
        <source>It burns.</source>
        <extracomment>quality-burns</extracomment>
        <translation>Es brennt.</translation>
    </message>
    <message>
        <source>It shoots.</source>
        <extracomment>quality-shoots</extracomment>
        <translation>Der Schmerz schießt ein.</translation>
    </message>
    <message>
        <source>It tingles.</source>
        <extracomment>quality-tingles</extracomment>
        <translation>Es kribbelt.</translation>
    </message>
    <message>
        <source>It is numb.</source>
        <extracomment>quality-numb</extracomment>
        <translation>Es ist taub.</translation>
    </message>
    <message>
        <source>It is stiff.</source>
        <extracomment>quality-stiff</extracomment>
        <translation>Es ist steif.</translation>
    </message>
    <message>
        <source>It throbs.</source>
        <extracomment>quality-throbs</extracomment>
        <translation>Es pocht.</translation>
    </message>
    <message>
        <source>It is sharp.</source>
        <extracomment>quality-sharp</extracomment>
        <translation>Es sticht.</translation>
    </message>
    <message>
        <source>It pulls.</source>
        <extracomment>quality-pulls</extracomment>
        <translation>Es zieht.</translation>
    </message>
    <message>
        <source>It feels tight.</source>
        <extracomment>quality-tight</extracomment>
        <translation>Es spannt.</translation>
    </message>
    <message>
        <source>It presses.</source>
        <extracomment>quality-presses</extracomment>
        <translation>Es drückt.</translation>
    </message>
    <message>
        <source>It is none of these.</source>
        <extracomment>quality-other</extracomment>
        <translation>Nichts davon passt.</translation>
    </message>
    <message>
        <source>It feels weak.</source>
        <extracomment>quality-weak</extracomment>
        <translation>Es fühlt sich schwach an.</translation>
    </message>
    <message>
        <source>It catches or gets stuck.</source>
        <extracomment>quality-catches</extracomment>
        <translation>Es hakt oder bleibt stecken.</translation>
    </message>
    <message>
        <source>It gives way.</source>
        <extracomment>quality-gives-way</extracomment>
        <translation>Es knickt weg.</translation>
    </message>
    <message>
        <source>It hurts when clothes touch it.</source>
        <extracomment>quality-touch</extracomment>
        <translation>Es tut weh, wenn Kleidung die Stelle berührt.</translation>
    </message>
    <message>
        <source>It feels swollen.</source>
        <extracomment>quality-swollen</extracomment>
        <translation>Es fühlt sich geschwollen an.</translation>
    </message>
    <message>
        <source>None of these fits. Say it in your own words.</source>
        <extracomment>quality-own</extracomment>
        <translation>Nichts davon passt. Sagen Sie es mit Ihren eigenen Worten.</translation>
    </message>
    <message>
        <source>How strong is the pain?</source>
        <extracomment>strength-title</extracomment>
        <translation>Wie stark ist der Schmerz?</translation>
    </message>
    <message>
        <source>How strong is the pain in this place?</source>
        <extracomment>strength-here</extracomment>
        <translation>Wie stark ist der Schmerz an dieser Stelle?</translation>
    </message>
    <message>
        <source>Choose a number from 0 to 10.</source>
        <extracomment>strength-how</extracomment>
        <translation>Wählen Sie eine Zahl von 0 bis 10.</translation>
    </message>
    <message>
        <source>0 means no pain at all.</source>
        <extracomment>strength-zero</extracomment>
        <translation>0 heißt: gar kein Schmerz.</translation>
    </message>
    <message>
        <source>10 means the worst pain you can think of.</source>
        <extracomment>strength-ten</extracomment>
        <translation>10 heißt: der schlimmste Schmerz, den Sie sich vorstellen können.</translation>
    </message>
    <message>
        <source>How strong is it now?</source>
        <extracomment>strength-now</extracomment>
        <translation>Wie stark ist er jetzt?</translation>
    </message>
    <message>
        <source>In the last 7 days, how strong was it at its worst?</source>
        <extracomment>strength-worst</extracomment>
        <translation>Wie stark war er in den letzten 7 Tagen, als er am stärksten war?</translation>
    </message>
    <message>
        <source>In the last 7 days, how strong was it at its best?</source>
        <extracomment>strength-best</extracomment>
        <translation>Wie stark war er in den letzten 7 Tagen, als er am schwächsten war?</translation>
    </message>
    <message>
        <source>You said that its best is more than its worst. Please look at the two once more.</source>
        <extracomment>strength-check</extracomment>
        <translation>Ihr Wert für den schwächsten Schmerz ist höher als der für den stärksten. Bitte sehen Sie sich beide noch einmal an.</translation>
    </message>
    <message>
        <source>When did it start?</source>
        <extracomment>since-title</extracomment>
        <translation>Wann hat es angefangen?</translation>
    </message>
    <message>
        <source>It started today.</source>
        <extracomment>since-today</extracomment>
        <translation>Es hat heute angefangen.</translation>
    </message>
    <message>
        <source>It started some days ago.</source>
        <extracomment>since-days</extracomment>
        <translation>Es hat vor einigen Tagen angefangen.</translation>
    </message>
    <message>
        <source>It started some weeks ago.</source>
        <extracomment>since-weeks</extracomment>
        <translation>Es hat vor einigen Wochen angefangen.</translation>
    </message>
    <message>
        <source>It started some months ago.</source>
        <extracomment>since-months</extracomment>
        <translation>Es hat vor einigen Monaten angefangen.</translation>
    </message>
    <message>
        <source>It started years ago.</source>
        <extracomment>since-years</extracomment>
        <translation>Es hat vor Jahren angefangen.</translation>
    </message>
    <message>
        <source>If you know the day, write it down.</source>
        <extracomment>since-date</extracomment>
        <translation>Wenn Sie den Tag wissen, schreiben Sie ihn auf.</translation>
    </message>
    <message>
        <source>How did it start?</source>
        <extracomment>since-how</extracomment>
        <translation>Wie hat es angefangen?</translation>
    </message>
    <message>
        <source>It came all at once.</source>
        <extracomment>since-sudden</extracomment>
        <translation>Es kam plötzlich.</translation>
    </message>
    <message>
        <source>It came bit by bit.</source>
        <extracomment>since-slow</extracomment>
        <translation>Es kam nach und nach.</translation>
    </message>
    <message>
        <source>It came after a fall, a blow, a lift or a crash.</source>
        <extracomment>since-injury</extracomment>
        <translation>Es kam nach einem Sturz, einem Schlag, nach dem Heben oder nach einem Unfall.</translation>
    </message>
    <message>
        <source>I do not know how it came.</source>
        <extracomment>since-unknown</extracomment>
        <translation>Ich weiß nicht, wie es kam.</translation>
    </message>
    <message>
        <source>Is it getting better, worse, or is it the same?</source>
        <extracomment>since-trend</extracomment>
        <translation>Wird es besser, wird es schlechter, oder bleibt es gleich?</translation>
    </message>
    <message>
        <source>What care have you had for it? Did it help?</source>
        <extracomment>since-care</extracomment>
        <translation>Wie wurde es bisher behandelt? Hat das geholfen?</translation>
    </message>
    <message>
        <source>What makes it worse?</source>
        <extracomment>worse-title</extracomment>
        <translation>Was macht es schlimmer?</translation>
    </message>
    <message>
        <source>What makes it better?</source>
        <extracomment>better-title</extracomment>
        <translation>Was macht es besser?</translation>
    </message>
    <message>
        <source>Choose all that fit, or use your own words.</source>
        <extracomment>change-how</extracomment>
        <translation>Wählen Sie alles, was passt, oder nehmen Sie Ihre eigenen Worte.</translation>
    </message>
    <message>
        <source>When I sit.</source>
        <extracomment>change-sitting</extracomment>
        <translation>Wenn ich sitze.</translation>
    </message>
    <message>
        <source>When I stand.</source>
        <extracomment>change-standing</extracomment>
        <translation>Wenn ich stehe.</translation>
    </message>
    <message>
        <source>When I walk.</source>
        <extracomment>change-walking</extracomment>
        <translation>Wenn ich gehe.</translation>
    </message>
    <message>
        <source>When I lie down.</source>
        <extracomment>change-lying</extracomment>
        <translation>Wenn ich liege.</translation>
    </message>
    <message>
        <source>When I bend.</source>
        <extracomment>change-bending</extracomment>
        <translation>Wenn ich mich bücke.</translation>
    </message>
    <message>
        <source>When I lift or carry.</source>
        <extracomment>change-lifting</extracomment>
        <translation>Wenn ich etwas hebe oder trage.</translation>
    </message>
    <message>
        <source>When I turn.</source>
        <extracomment>change-turning</extracomment>
        <translation>Wenn ich mich drehe.</translation>
    </message>
    <message>
        <source>When I reach up.</source>
        <extracomment>change-reaching</extracomment>
        <translation>Wenn ich nach oben greife.</translation>
    </message>
    <message>
        <source>When I use the stairs.</source>
        <extracomment>change-stairs</extracomment>
        <translation>Wenn ich Treppen gehe.</translation>
    </message>
    <message>
        <source>When I get up from a chair or bed.</source>
        <extracomment>change-rising</extracomment>
        <translation>Wenn ich vom Stuhl oder aus dem Bett aufstehe.</translation>
    </message>
    <message>
        <source>When I rest.</source>
        <extracomment>change-resting</extracomment>
        <translation>Wenn ich mich ausruhe.</translation>
    </message>
    <message>
        <source>When I move.</source>
        <extracomment>change-moving</extracomment>
        <translation>Wenn ich mich bewege.</translation>
    </message>
    <message>
        <source>When I cough or sneeze.</source>
        <extracomment>change-cough</extracomment>
        <translation>Wenn ich huste oder niese.</translation>
    </message>
    <message>
        <source>When it is warm.</source>
        <extracomment>change-heat</extracomment>
        <translation>Wenn es warm ist.</translation>
    </message>
    <message>
        <source>When it is cold.</source>
        <extracomment>change-cold</extracomment>
        <translation>Wenn es kalt ist.</translation>
    </message>
    <message>
        <source>When I am under stress.</source>
        <extracomment>change-stress</extracomment>
        <translation>Wenn ich Stress habe.</translation>
    </message>
    <message>
        <source>When I take a pill for it.</source>
        <extracomment>change-medicine</extracomment>
        <translation>Wenn ich eine Tablette dagegen nehme.</translation>
    </message>
    <message>
        <source>There is nothing that I know of.</source>
        <extracomment>change-nothing</extracomment>
        <translation>Nichts, das ich wüsste.</translation>
    </message>
    <message>
        <source>What makes it worse or better?</source>
        <extracomment>change-title</extracomment>
        <translation>Was macht es schlimmer oder besser?</translation>
    </message>
    <message>
        <source>It gets worse.</source>
        <extracomment>change-worse</extracomment>
        <translation>Es wird schlimmer.</translation>
    </message>
    <message>
        <source>It gets better.</source>
        <extracomment>change-better</extracomment>
        <translation>Es wird besser.</translation>
    </message>
    <message>
        <source>Say what else it is.</source>
        <extracomment>change-own</extracomment>
        <translation>Sagen Sie, was es sonst noch ist.</translation>
    </message>
    <message>
        <source>How much must you do before it gets worse?</source>
        <extracomment>settle-how-much</extracomment>
        <translation>Wie viel müssen Sie tun, bis es schlimmer wird?</translation>
    </message>
    <message>
        <source>It takes very little.</source>
        <extracomment>settle-little</extracomment>
        <translation>Es braucht sehr wenig.</translation>
    </message>
    <message>
        <source>It takes some time or work.</source>
        <extracomment>settle-some</extracomment>
        <translation>Es braucht etwas Zeit oder Arbeit.</translation>
    </message>
    <message>
        <source>It takes a lot.</source>
        <extracomment>settle-lots</extracomment>
        <translation>Es braucht viel.</translation>
    </message>
    <message>
        <source>Once it is worse, how long does it take to calm down?</source>
        <extracomment>settle-title</extracomment>
        <translation>Wenn es schlimmer geworden ist: Wie lange dauert es, bis es sich beruhigt?</translation>
    </message>
    <message>
        <source>It takes some minutes.</source>
        <extracomment>settle-minutes</extracomment>
        <translation>Es dauert einige Minuten.</translation>
    </message>
    <message>
        <source>It takes some hours.</source>
        <extracomment>settle-hours</extracomment>
        <translation>Es dauert einige Stunden.</translation>
    </message>
    <message>
        <source>It takes a day or more.</source>
        <extracomment>settle-days</extracomment>
        <translation>Es dauert einen Tag oder länger.</translation>
    </message>
    <message>
        <source>How does it change from morning to night?</source>
        <extracomment>day-title</extracomment>
        <translation>Wie ändert es sich vom Morgen bis zur Nacht?</translation>
    </message>
    <message>
        <source>How is it when you wake up?</source>
        <extracomment>day-waking</extracomment>
        <translation>Wie ist es beim Aufwachen?</translation>
    </message>
    <message>
        <source>How is it in the morning?</source>
        <extracomment>day-morning</extracomment>
        <translation>Wie ist es am Morgen?</translation>
    </message>
    <message>
        <source>How is it in the middle of the day?</source>
        <extracomment>day-noon</extracomment>
        <translation>Wie ist es mitten am Tag?</translation>
    </message>
    <message>
        <source>How is it late in the day?</source>
        <extracomment>day-evening</extracomment>
        <translation>Wie ist es gegen Abend?</translation>
    </message>
    <message>
        <source>How is it at night?</source>
        <extracomment>day-night</extracomment>
        <translation>Wie ist es in der Nacht?</translation>
    </message>
    <message>
        <source>There is no pain.</source>
        <extracomment>day-none</extracomment>
        <translation>Es tut nicht weh.</translation>
    </message>
    <message>
        <source>It is less.</source>
        <extracomment>day-less</extracomment>
        <translation>Es ist weniger.</translation>
    </message>
    <message>
        <source>It is about the same.</source>
        <extracomment>day-same</extracomment>
        <translation>Es ist etwa gleich.</translation>
    </message>
    <message>
        <source>It is more.</source>
        <extracomment>day-more</extracomment>
        <translation>Es ist mehr.</translation>
    </message>
    <message>
        <source>Are you stiff when you wake up? How many minutes does it last?</source>
        <extracomment>day-stiff</extracomment>
        <translation>Sind Sie beim Aufwachen steif? Wie viele Minuten dauert das?</translation>
    </message>
    <message>
        <source>Does it wake you at night? How many times?</source>
        <extracomment>day-wakes</extracomment>
        <translation>Weckt es Sie nachts auf? Wie oft?</translation>
    </message>
    <message>
        <source>What is hard for you to do?</source>
        <extracomment>hard-title</extracomment>
        <translation>Was fällt Ihnen schwer?</translation>
    </message>
    <message>
        <source>Name three things that you need or want to do, and that are hard now.</source>
        <extracomment>hard-how</extracomment>
        <translation>Nennen Sie drei Dinge, die Sie tun müssen oder wollen und die jetzt schwerfallen.</translation>
    </message>
    <message>
        <source>It can be putting on shoes, sleeping, work, or playing with a child.</source>
        <extracomment>hard-like</extracomment>
        <translation>Das kann Schuhe anziehen, Schlafen, Arbeit oder Spielen mit einem Kind sein.</translation>
    </message>
    <message>
        <source>This is the first thing.</source>
        <extracomment>hard-first</extracomment>
        <translation>Das ist das Erste.</translation>
    </message>
    <message>
        <source>This is the second thing.</source>
        <extracomment>hard-second</extracomment>
        <translation>Das ist das Zweite.</translation>
    </message>
    <message>
        <source>This is the third thing.</source>
        <extracomment>hard-third</extracomment>
        <translation>Das ist das Dritte.</translation>
    </message>
    <message>
        <source>Give each a number from 0 to 10. Think of today.</source>
        <extracomment>hard-number</extracomment>
        <translation>Geben Sie jedem eine Zahl von 0 bis 10. Denken Sie an heute.</translation>
    </message>
    <message>
        <source>0 means that you cannot do it at all.</source>
        <extracomment>hard-zero</extracomment>
        <translation>0 heißt: Sie können es gar nicht.</translation>
    </message>
    <message>
        <source>10 means that you can do it as you did before.</source>
        <extracomment>hard-ten</extracomment>
        <translation>10 heißt: Sie können es so wie vorher.</translation>
    </message>
    <message>
        <source>What do you hope for?</source>
        <extracomment>goal-title</extracomment>
        <translation>Was erhoffen Sie sich?</translation>
    </message>
    <message>
        <source>Say it in your own words.</source>
        <extracomment>goal-own</extracomment>
        <translation>Sagen Sie es mit Ihren eigenen Worten.</translation>
    </message>
    <message>
        <source>Is there something that you fear about it?</source>
        <extracomment>goal-fear</extracomment>
        <translation>Gibt es etwas, wovor Sie dabei Angst haben?</translation>
    </message>
    <message>
        <source>Is there some kind of care that you do not want?</source>
        <extracomment>goal-not</extracomment>
        <translation>Gibt es eine Art von Behandlung, die Sie nicht wollen?</translation>
    </message>
    <message>
        <source>What must we know about your health?</source>
        <extracomment>health-title</extracomment>
        <translation>Was müssen wir über Ihre Gesundheit wissen?</translation>
    </message>
    <message>
        <source>Some care can harm you if we do not know this. So please tell us all of it.</source>
        <extracomment>health-why</extracomment>
        <translation>Manche Behandlung kann Ihnen schaden, wenn wir das nicht wissen. Sagen Sie uns darum bitte alles.</translation>
    </message>
    <message>
        <source>Yes.</source>
        <extracomment>health-yes</extracomment>
        <translation>Ja.</translation>
    </message>
    <message>
        <source>No.</source>
        <extracomment>health-no</extracomment>
        <translation>Nein.</translation>
    </message>
    <message>
        <source>I am not sure.</source>
        <extracomment>health-unsure</extracomment>
        <translation>Ich bin nicht sicher.</translation>
    </message>
    <message>
        <source>Which one? Since when?</source>
        <extracomment>health-which</extracomment>
        <translation>Was genau? Seit wann?</translation>
    </message>
    <message>
        <source>Which pills, drops, shots or patches do you use?</source>
        <extracomment>medicine-title</extracomment>
        <translation>Welche Tabletten, Tropfen, Spritzen oder Pflaster verwenden Sie?</translation>
    </message>
    <message>
        <source>Write down all of them, also those from a shop and those made from plants.</source>
        <extracomment>medicine-all</extracomment>
        <translation>Schreiben Sie alle auf, auch Mittel aus dem Laden und Mittel aus Pflanzen.</translation>
    </message>
    <message>
        <source>Bring the list or the boxes with you.</source>
        <extracomment>medicine-bring</extracomment>
        <translation>Bringen Sie die Liste oder die Packungen mit.</translation>
    </message>
    <message>
        <source>Do you take a blood thinner?</source>
        <extracomment>medicine-anticoagulant</extracomment>
        <translation>Nehmen Sie einen Blutverdünner?</translation>
    </message>
    <message>
        <source>Do you take aspirin, or a drug like it, to keep your blood thin?</source>
        <extracomment>medicine-antiplatelet</extracomment>
        <translation>Nehmen Sie Aspirin (ASS) oder ein ähnliches Mittel, damit Ihr Blut dünn bleibt?</translation>
    </message>
    <message>
        <source>Do you take steroid drugs, or did you for a long time?</source>
        <extracomment>medicine-steroids</extracomment>
        <translation>Nehmen Sie Kortison oder ähnliche Mittel (Steroide), oder haben Sie sie lange genommen?</translation>
    </message>
    <message>
        <source>Do not stop or change a drug because of our questions.</source>
        <extracomment>medicine-keep</extracomment>
        <translation>Wegen unserer Fragen sollen Sie kein Medikament absetzen oder ändern.</translation>
    </message>
    <message>
        <source>Have you had an operation?</source>
        <extracomment>surgery-title</extracomment>
        <translation>Sind Sie schon einmal operiert worden?</translation>
    </message>
    <message>
        <source>What was done, where, and in which year?</source>
        <extracomment>surgery-what</extracomment>
        <translation>Was wurde gemacht, wo und in welchem Jahr?</translation>
    </message>
    <message>
        <source>Is there anything in your body that was put there?</source>
        <extracomment>implant-title</extracomment>
        <translation>Ist in Ihrem Körper etwas, das dort eingesetzt wurde?</translation>
    </message>
    <message>
        <source>Does anything make your skin itch, swell or burn?</source>
        <extracomment>allergy-title</extracomment>
        <translation>Gibt es etwas, wovon Ihre Haut juckt, anschwillt oder brennt?</translation>
    </message>
    <message>
        <source>Are you pregnant, or might you be?</source>
        <extracomment>pregnancy-title</extracomment>
        <translation>Sind Sie schwanger, oder könnten Sie es sein?</translation>
    </message>
    <message>
        <source>Which week are you in?</source>
        <extracomment>pregnancy-week</extracomment>
        <translation>In welcher Woche sind Sie?</translation>
    </message>
    <message>
        <source>Have you given birth in the last six months?</source>
        <extracomment>pregnancy-birth</extracomment>
        <translation>Haben Sie in den letzten sechs Monaten ein Kind geboren?</translation>
    </message>
    <message>
        <source>Do you bleed or bruise with ease?</source>
        <extracomment>health-bleeding-disorder</extracomment>
        <translation>Bluten Sie leicht, oder bekommen Sie leicht blaue Flecken?</translation>
    </message>
    <message>
        <source>Are your bones thin? Has a bone cracked from a small fall?</source>
        <extracomment>health-osteoporosis</extracomment>
        <translation>Sind Ihre Knochen dünn? Ist einmal ein Knochen nach einem kleinen Sturz gebrochen?</translation>
    </message>
    <message>
        <source>Do you have cancer, or have you had it?</source>
        <extracomment>health-cancer</extracomment>
        <translation>Haben Sie Krebs, oder hatten Sie Krebs?</translation>
    </message>
    <message>
        <source>Have you ever had a clot in a leg or lung?</source>
        <extracomment>health-clot</extracomment>
        <translation>Hatten Sie schon einmal ein Blutgerinnsel in einem Bein oder in der Lunge?</translation>
    </message>
    <message>
        <source>Do you have too much sugar in your blood (diabetes)?</source>
        <extracomment>health-diabetes</extracomment>
        <translation>Haben Sie zu viel Zucker im Blut (Diabetes)?</translation>
    </message>
    <message>
        <source>Is your blood pressure too high?</source>
        <extracomment>health-pressure</extracomment>
        <translation>Ist Ihr Blutdruck zu hoch?</translation>
    </message>
    <message>
        <source>Do you have trouble with your heart, or have you had a stroke?</source>
        <extracomment>health-heart</extracomment>
        <translation>Haben Sie Probleme mit dem Herzen, oder hatten Sie einen Schlaganfall?</translation>
    </message>
    <message>
        <source>Is there a place where you feel little or nothing?</source>
        <extracomment>health-numb</extracomment>
        <translation>Gibt es eine Stelle, an der Sie wenig oder nichts spüren?</translation>
    </message>
    <message>
        <source>Does your skin tear with ease?</source>
        <extracomment>health-skin</extracomment>
        <translation>Reißt Ihre Haut leicht ein?</translation>
    </message>
    <message>
        <source>Do you have a cut, burn, rash or sore place on your skin?</source>
        <extracomment>health-wound</extracomment>
        <translation>Haben Sie an der Haut einen Schnitt, eine Verbrennung, einen Ausschlag oder eine wunde Stelle?</translation>
    </message>
    <message>
        <source>Do you have thick, bent veins in your legs (varicose veins)?</source>
        <extracomment>health-veins</extracomment>
        <translation>Haben Sie dicke, geschlängelte Adern an den Beinen (Krampfadern)?</translation>
    </message>
    <message>
        <source>Have you had lymph nodes taken out or treated with rays?</source>
        <extracomment>health-lymph</extracomment>
        <translation>Wurden bei Ihnen Lymphknoten entfernt oder bestrahlt?</translation>
    </message>
    <message>
        <source>Have you had a shot in a joint or muscle in the last weeks?</source>
        <extracomment>health-injection</extracomment>
        <translation>Haben Sie in den letzten Wochen eine Spritze in ein Gelenk oder einen Muskel bekommen?</translation>
    </message>
    <message>
        <source>Do you have joints that swell, or joints that slip out?</source>
        <extracomment>health-joints</extracomment>
        <translation>Haben Sie Gelenke, die anschwellen, oder Gelenke, die herausspringen?</translation>
    </message>
    <message>
        <source>Are bones of your spine grown or screwed into one?</source>
        <extracomment>health-fused</extracomment>
        <translation>Sind Knochen Ihrer Wirbelsäule zusammengewachsen oder zusammengeschraubt?</translation>
    </message>
    <message>
        <source>Has care by hand ever made you worse? What came of it?</source>
        <extracomment>health-reaction</extracomment>
        <translation>Ging es Ihnen nach einer Behandlung mit den Händen einmal schlechter? Was wurde daraus?</translation>
    </message>
    <message>
        <source>Is there something else that we must know?</source>
        <extracomment>health-other</extracomment>
        <translation>Gibt es noch etwas, das wir wissen müssen?</translation>
    </message>
    <message>
        <source>Who is your doctor? May we write to your doctor?</source>
        <extracomment>health-doctor</extracomment>
        <translation>Wer ist Ihre Ärztin oder Ihr Arzt? Dürfen wir dorthin schreiben?</translation>
    </message>
    <message>
        <source>Go on.</source>
        <extracomment>move-next</extracomment>
        <translation>Weiter.</translation>
    </message>
    <message>
        <source>Go back.</source>
        <extracomment>move-back</extracomment>
        <translation>Zurück.</translation>
    </message>
    <message>
        <source>Skip this.</source>
        <extracomment>move-skip</extracomment>
        <translation>Das überspringen.</translation>
    </message>
    <message>
        <source>I need help.</source>
        <extracomment>move-help</extracomment>
        <translation>Ich brauche Hilfe.</translation>
    </message>
    <message>
        <source>Please tell your therapist now that you need help. Your answers are safe.</source>
        <extracomment>move-help-said</extracomment>
        <translation>Sagen Sie bitte jetzt Ihrer Therapeutin oder Ihrem Therapeuten, dass Sie Hilfe brauchen. Ihre Antworten sind sicher.</translation>
    </message>
    <message>
        <source>We could not save this. Please tell your therapist now.</source>
        <extracomment>move-not-saved</extracomment>
        <translation>Wir konnten das nicht speichern. Sagen Sie es bitte jetzt Ihrer Therapeutin oder Ihrem Therapeuten.</translation>
    </message>
    <message>
        <source>This is page {page} of {pages}.</source>
        <extracomment>move-page</extracomment>
        <translation>Das ist Seite {page} von {pages}.</translation>
    </message>
    <message>
        <source>This is very long. We keep all of it. Please say the main point first.</source>
        <extracomment>move-long</extracomment>
        <translation>Das ist sehr lang. Wir behalten alles. Bitte sagen Sie das Wichtigste zuerst.</translation>
    </message>
    <message>
        <source>There is no answer here yet. You can go on and come back.</source>
        <extracomment>move-missing</extracomment>
        <translation>Hier ist noch keine Antwort. Sie können weitergehen und später zurückkommen.</translation>
    </message>
    <message>
        <source>These two answers do not fit. Please look at them once more.</source>
        <extracomment>move-clash</extracomment>
        <translation>Diese zwei Antworten passen nicht zusammen. Bitte sehen Sie sich beide noch einmal an.</translation>
    </message>
    <message>
        <source>Please look at your answers once more.</source>
        <extracomment>end-check-title</extracomment>
        <translation>Bitte sehen Sie sich Ihre Antworten noch einmal an.</translation>
    </message>
    <message>
        <source>You can still change them.</source>
        <extracomment>end-change</extracomment>
        <translation>Ihre Antworten können Sie noch ändern.</translation>
    </message>
    <message>
        <source>Change this.</source>
        <extracomment>end-change-this</extracomment>
        <translation>Das ändern.</translation>
    </message>
    <message>
        <source>There is no answer.</source>
        <extracomment>end-no-answer</extracomment>
        <translation>Es gibt keine Antwort.</translation>
    </message>
    <message>
        <source>You did not answer {count} of these. Here is the first one.</source>
        <extracomment>end-missing</extracomment>
        <translation>Sie haben {count} davon nicht beantwortet. Hier ist die erste Frage davon.</translation>
    </message>
    <message>
        <source>Thank you. That was the last question.</source>
        <extracomment>end-thanks</extracomment>
        <translation>Danke. Das war die letzte Frage.</translation>
    </message>
    <message>
        <source>Please give this back to your therapist now.</source>
        <extracomment>end-hand-back</extracomment>
        <translation>Bitte geben Sie das jetzt Ihrer Therapeutin oder Ihrem Therapeuten zurück.</translation>
    </message>
    <message>
        <source>This screen stays shut for others. Only your therapist can go on from here.</source>
        <extracomment>end-locked</extracomment>
        <translation>Dieser Bildschirm bleibt für andere gesperrt. Nur Ihre Therapeutin oder Ihr Therapeut kann hier weitermachen.</translation>
    </message>
    <message>
        <source>For the therapist.</source>
        <extracomment>end-therapist</extracomment>
        <translation>Für die Therapeutin oder den Therapeuten.</translation>
    </message>
    <message>
        <source>Your therapist will now go through it with you.</source>
        <extracomment>end-talk</extracomment>
        <translation>Ihre Therapeutin oder Ihr Therapeut geht es jetzt mit Ihnen durch.</translation>
    </message>
    <message>
        <source>Please bring these pages to your visit. Do not send them by plain mail or e-mail.</source>
        <extracomment>end-form-bring</extracomment>
        <translation>Bitte bringen Sie diese Seiten zu Ihrem Termin mit. Schicken Sie sie nicht mit normaler Post oder E-Mail.</translation>
    </message>
    <message>
        <source>Sign your name here, and write the date.</source>
        <extracomment>end-form-sign</extracomment>
        <translation>Unterschreiben Sie hier, und schreiben Sie das Datum dazu.</translation>
    </message>
    <message>
        <source>If it gets much worse before your visit, call us or your doctor.</source>
        <extracomment>end-form-worse</extracomment>
        <translation>Wird es vor Ihrem Termin viel schlimmer? Dann rufen Sie uns, Ihre Ärztin oder Ihren Arzt an.</translation>
    </message>
</context>
<context>
    <name>techniques</name>
    <message>
        <source>long slow strokes</source>
        <extracomment>gliding</extracomment>
        <translation>lange, langsame Streichungen</translation>
    </message>
    <message>
        <source>rolling a fold of skin</source>
        <extracomment>skin-rolling</extracomment>
        <translation>Rollen einer Hautfalte</translation>
    </message>
    <message>
        <source>steady pressure on one spot</source>
        <extracomment>sustained-pressure</extracomment>
        <translation>gleichmäßiger Druck auf eine Stelle</translation>
    </message>
    <message>
        <source>small rubs across one spot</source>
        <extracomment>cross-fibre</extracomment>
        <translation>kleine Reibungen quer über eine Stelle</translation>
    </message>
    <message>
        <source>a held spot while you moved</source>
        <extracomment>hold-and-lengthen</extracomment>
        <translation>Halten einer Stelle, während Sie sich bewegten</translation>
    </message>
    <message>
        <source>light strokes with a tool</source>
        <extracomment>instrument</extracomment>
        <translation>leichte Streichungen mit einem Werkzeug</translation>
    </message>
    <message>
        <source>cups that stand still</source>
        <extracomment>cups-still</extracomment>
        <translation>Schröpfköpfe, die stehen bleiben</translation>
    </message>
    <message>
        <source>cups that move with oil</source>
        <extracomment>cups-gliding</extracomment>
        <translation>Schröpfköpfe, die mit Öl gleiten</translation>
    </message>
    <message>
        <source>small gentle moves of the joint</source>
        <extracomment>mobilise-gently</extracomment>
        <translation>kleine, sanfte Bewegungen des Gelenks</translation>
    </message>
    <message>
        <source>firm moves of the joint</source>
        <extracomment>mobilise-firmly</extracomment>
        <translation>kräftige Bewegungen des Gelenks</translation>
    </message>
    <message>
        <source>one quick small push</source>
        <extracomment>thrust</extracomment>
        <translation>ein schneller, kleiner Impuls</translation>
    </message>
    <message>
        <source>a stretch with slow breaths</source>
        <extracomment>stretch-breath</extracomment>
        <translation>eine Dehnung mit langsamen Atemzügen</translation>
    </message>
    <message>
        <source>a stretch after you pressed</source>
        <extracomment>stretch-contract-relax</extracomment>
        <translation>eine Dehnung, nachdem Sie dagegen gedrückt hatten</translation>
    </message>
    <message>
        <source>a held pose that eased the spot</source>
        <extracomment>held-ease</extracomment>
        <translation>eine gehaltene Lage, die der Stelle Erleichterung gab</translation>
    </message>
</context>
<context>
    <name>warning-signs</name>
    <message>
        <source>Do you have pain, weight or tightness in your chest right now?</source>
        <extracomment>chest-pain-now, as it is asked</extracomment>
        <translation>Haben Sie jetzt gerade Schmerzen, Druck oder Enge in der Brust?</translation>
    </message>
    <message>
        <source>chest pain or pressure at rest</source>
        <extracomment>chest-pain-now</extracomment>
        <translation>Schmerzen oder Druck in der Brust in Ruhe</translation>
    </message>
    <message>
        <source>Does walking fast or climbing stairs bring on pain in your chest, arm or jaw?</source>
        <extracomment>effort-chest-arm-jaw-pain, as it is asked</extracomment>
        <translation>Bekommen Sie beim schnellen Gehen oder Treppensteigen Schmerzen in Brust, Arm oder Kiefer?</translation>
    </message>
    <message>
        <source>chest, arm or jaw pain on effort</source>
        <extracomment>effort-chest-arm-jaw-pain</extracomment>
        <translation>Schmerzen in Brust, Arm oder Kiefer bei Anstrengung</translation>
    </message>
    <message>
        <source>Are you newly short of breath, in pain when you breathe in, or coughing up blood?</source>
        <extracomment>lung-clot-signs, as it is asked</extracomment>
        <translation>Bekommen Sie neuerdings schlecht Luft? Oder tut das Einatmen weh, oder husten Sie Blut?</translation>
    </message>
    <message>
        <source>sudden breathlessness, pain on breathing in, coughing blood</source>
        <extracomment>lung-clot-signs</extracomment>
        <translation>plötzliche Atemnot, Schmerzen beim Einatmen, Bluthusten</translation>
    </message>
    <message>
        <source>Did a sudden, tearing pain start in your chest, back or belly?</source>
        <extracomment>tearing-chest-back-pain, as it is asked</extracomment>
        <translation>Hat in Brust, Rücken oder Bauch plötzlich ein reißender Schmerz begonnen?</translation>
    </message>
    <message>
        <source>sudden tearing pain in chest or back</source>
        <extracomment>tearing-chest-back-pain</extracomment>
        <translation>plötzlicher reißender Schmerz in Brust oder Rücken</translation>
    </message>
    <message>
        <source>Have you passed out, or felt your heart race for no reason, in the last 2 weeks?</source>
        <extracomment>fainting-or-racing-heart, as it is asked</extracomment>
        <translation>Waren Sie in den letzten 2 Wochen ohnmächtig, oder raste Ihr Herz ohne Grund?</translation>
    </message>
    <message>
        <source>fainting, or a racing or uneven heart</source>
        <extracomment>fainting-or-racing-heart</extracomment>
        <translation>Ohnmacht oder rasender oder unregelmäßiger Herzschlag</translation>
    </message>
    <message>
        <source>Has an arm or leg turned cold, pale or blue and sore, all of a sudden?</source>
        <extracomment>cold-pale-limb, as it is asked</extracomment>
        <translation>Ist plötzlich ein Arm oder Bein kalt, blass oder blau geworden und tut weh?</translation>
    </message>
    <message>
        <source>cold, pale, numb limb</source>
        <extracomment>cold-pale-limb</extracomment>
        <translation>Arm oder Bein kalt, blass und taub</translation>
    </message>
    <message>
        <source>Does walking a set distance hurt your calf or thigh, until you stand still?</source>
        <extracomment>walking-calf-pain, as it is asked</extracomment>
        <translation>Tut beim Gehen nach einer bestimmten Strecke Wade oder Oberschenkel weh, bis Sie stehen bleiben?</translation>
    </message>
    <message>
        <source>leg pain on walking that rest eases</source>
        <extracomment>walking-calf-pain</extracomment>
        <translation>Beinschmerzen beim Gehen, die in Ruhe nachlassen</translation>
    </message>
    <message>
        <source>Can you see or softly feel a wide pulse that pushes out in the belly?</source>
        <extracomment>pulsating-belly-mass, as it is asked</extracomment>
        <translation>Sehen oder tasten Sie (nur sanft) im Bauch einen breiten Puls, der nach außen drückt?</translation>
    </message>
    <message>
        <source>pulsating swelling in the abdomen</source>
        <extracomment>pulsating-belly-mass</extracomment>
        <translation>pulsierende Schwellung im Bauch</translation>
    </message>
    <message>
        <source>Do you feel a strong heartbeat in your belly when you lie down?</source>
        <extracomment>belly-pulse-felt, as it is asked</extracomment>
        <translation>Spüren Sie im Liegen einen starken Herzschlag im Bauch?</translation>
    </message>
    <message>
        <source>patient feels a pulse in the belly</source>
        <extracomment>belly-pulse-felt</extracomment>
        <translation>selbst gespürter Puls im Bauch</translation>
    </message>
    <message>
        <source>Has your face drooped, an arm gone weak or your speech slurred, even for a short time?</source>
        <extracomment>stroke-signs, as it is asked</extracomment>
        <translation>Hängt Ihr Gesicht herunter, ist ein Arm schwach oder die Sprache undeutlich? Oder war das so, auch nur kurz?</translation>
    </message>
    <message>
        <source>face droop, arm weakness, speech trouble</source>
        <extracomment>stroke-signs</extracomment>
        <translation>hängendes Gesicht, schwacher Arm, Probleme beim Sprechen</translation>
    </message>
    <message>
        <source>Did a very bad headache hit you all at once, at its worst in 5 minutes or less?</source>
        <extracomment>thunderclap-headache, as it is asked</extracomment>
        <translation>Traf Sie plötzlich ein sehr starker Kopfschmerz, der nach höchstens 5 Minuten am stärksten war?</translation>
    </message>
    <message>
        <source>thunderclap headache</source>
        <extracomment>thunderclap-headache</extracomment>
        <translation>Donnerschlag-Kopfschmerz (plötzlich und sehr stark)</translation>
    </message>
    <message>
        <source>Do you have a fever along with a stiff neck, bad headache, or eyes that hate light?</source>
        <extracomment>fever-stiff-neck, as it is asked</extracomment>
        <translation>Haben Sie Fieber und dazu einen steifen Nacken, starke Kopfschmerzen oder lichtempfindliche Augen?</translation>
    </message>
    <message>
        <source>fever with stiff neck, light hurts, rash</source>
        <extracomment>fever-stiff-neck</extracomment>
        <translation>Fieber mit steifem Nacken, Schmerz durch Licht, Hautausschlag</translation>
    </message>
    <message>
        <source>With this new headache, does chewing hurt, is your scalp sore, or is your sight worse?</source>
        <extracomment>new-headache-over-50-jaw-sight, as it is asked</extracomment>
        <translation>Tut bei diesem neuen Kopfschmerz das Kauen weh, schmerzt die Kopfhaut, oder sehen Sie schlechter?</translation>
    </message>
    <message>
        <source>new headache from 50 on with jaw, scalp or sight trouble</source>
        <extracomment>new-headache-over-50-jaw-sight</extracomment>
        <translation>neuer Kopfschmerz ab 50 Jahren mit Problemen an Kiefer, Kopfhaut oder beim Sehen</translation>
    </message>
    <message>
        <source>Have you lost sight in one or both eyes, or seen a dark veil, even for minutes?</source>
        <extracomment>new-sight-loss, as it is asked</extracomment>
        <translation>Haben Sie auf einem oder beiden Augen die Sehkraft verloren, auch nur für Minuten? Oder sahen Sie, auch nur für Minuten, einen dunklen Schleier?</translation>
    </message>
    <message>
        <source>sudden loss of sight or a shadow over the eye</source>
        <extracomment>new-sight-loss</extracomment>
        <translation>plötzlicher Verlust der Sehkraft oder ein Schatten vor dem Auge</translation>
    </message>
    <message>
        <source>Does this headache grow week by week, wake you, or get worse when you cough or bend?</source>
        <extracomment>headache-getting-worse, as it is asked</extracomment>
        <translation>Wird dieser Kopfschmerz von Woche zu Woche stärker? Oder weckt er Sie, oder wird er beim Husten oder Bücken schlimmer?</translation>
    </message>
    <message>
        <source>headache growing, waking, worse on strain</source>
        <extracomment>headache-getting-worse</extracomment>
        <translation>Kopfschmerz, der zunimmt, aufweckt oder beim Pressen stärker wird</translation>
    </message>
    <message>
        <source>Since the blow to your head, have you been sick, very sleepy, mixed up or had a fit?</source>
        <extracomment>head-injury-drowsy, as it is asked</extracomment>
        <translation>Haben Sie seit dem Schlag auf den Kopf erbrochen? Oder waren Sie seither sehr schläfrig oder verwirrt, oder hatten Sie einen Krampfanfall?</translation>
    </message>
    <message>
        <source>drowsy, vomiting or confused after a blow to the head</source>
        <extracomment>head-injury-drowsy</extracomment>
        <translation>Schläfrigkeit, Erbrechen oder Verwirrtheit nach einem Schlag auf den Kopf</translation>
    </message>
    <message>
        <source>Did you hit your head while you take a drug that thins your blood?</source>
        <extracomment>head-injury-blood-thinner, as it is asked</extracomment>
        <translation>Haben Sie sich den Kopf angeschlagen und nehmen Sie ein Mittel, das Ihr Blut verdünnt?</translation>
    </message>
    <message>
        <source>blow to the head on a blood thinner</source>
        <extracomment>head-injury-blood-thinner</extracomment>
        <translation>Schlag auf den Kopf bei Einnahme eines Blutverdünners</translation>
    </message>
    <message>
        <source>Is this neck pain or headache new, and not like any you had before?</source>
        <extracomment>neck-pain-unlike-any-before, as it is asked</extracomment>
        <translation>Sind diese Schmerzen an Nacken, Hals oder Kopf neu und anders als alle zuvor?</translation>
    </message>
    <message>
        <source>new neck pain or headache unlike any before</source>
        <extracomment>neck-pain-unlike-any-before</extracomment>
        <translation>neue Nacken- oder Kopfschmerzen, anders als alle zuvor</translation>
    </message>
    <message>
        <source>Did dizzy spells or feeling sick start with this neck or head pain?</source>
        <extracomment>neck-dizzy-or-sick, as it is asked</extracomment>
        <translation>Begannen mit diesen Nacken- oder Kopfschmerzen auch Schwindel oder Übelkeit?</translation>
    </message>
    <message>
        <source>dizziness or nausea with neck pain (D, N)</source>
        <extracomment>neck-dizzy-or-sick</extracomment>
        <translation>Schwindel oder Übelkeit bei Nackenschmerzen (D, N)</translation>
    </message>
    <message>
        <source>Have you begun to see double?</source>
        <extracomment>neck-double-vision, as it is asked</extracomment>
        <translation>Sehen Sie neuerdings doppelt?</translation>
    </message>
    <message>
        <source>double vision (D: diplopia)</source>
        <extracomment>neck-double-vision</extracomment>
        <translation>Doppelbilder (D: Diplopie)</translation>
    </message>
    <message>
        <source>Have your legs given way so that you fell, without passing out?</source>
        <extracomment>neck-drop-attack, as it is asked</extracomment>
        <translation>Haben Ihre Beine nachgegeben, sodass Sie gestürzt sind, ohne ohnmächtig zu werden?</translation>
    </message>
    <message>
        <source>drop attack (D)</source>
        <extracomment>neck-drop-attack</extracomment>
        <translation>plötzlicher Sturz ohne Ohnmacht (Drop Attack, D)</translation>
    </message>
    <message>
        <source>Do you have new trouble with speaking clearly or with swallowing?</source>
        <extracomment>neck-speech-or-swallowing, as it is asked</extracomment>
        <translation>Haben Sie neuerdings Probleme, deutlich zu sprechen oder zu schlucken?</translation>
    </message>
    <message>
        <source>trouble speaking or swallowing (D: dysarthria, dysphagia)</source>
        <extracomment>neck-speech-or-swallowing</extracomment>
        <translation>Probleme beim Sprechen oder Schlucken (D: Dysarthrie, Dysphagie)</translation>
    </message>
    <message>
        <source>Has your face, or one side of you, gone numb?</source>
        <extracomment>neck-face-numbness, as it is asked</extracomment>
        <translation>Ist Ihr Gesicht oder eine Körperseite taub geworden?</translation>
    </message>
    <message>
        <source>numb face or one side of the body (N)</source>
        <extracomment>neck-face-numbness</extracomment>
        <translation>Taubheit im Gesicht oder auf einer Körperseite (N)</translation>
    </message>
    <message>
        <source>Do the eyes jerk while looking at you, or is the walk newly broad and unsteady?</source>
        <extracomment>neck-nystagmus-or-gait, as it is asked</extracomment>
        <translation>Zucken die Augen beim Blick auf Sie? Oder ist der Gang neuerdings breitbeinig und unsicher?</translation>
    </message>
    <message>
        <source>nystagmus or new unsteady gait (N, ataxia)</source>
        <extracomment>neck-nystagmus-or-gait</extracomment>
        <translation>Nystagmus oder neu unsicherer Gang (N, Ataxie)</translation>
    </message>
    <message>
        <source>Does one lid droop while the pupil on that side is smaller?</source>
        <extracomment>neck-drooping-lid, as it is asked</extracomment>
        <translation>Hängt ein Augenlid, und ist auf dieser Seite die Pupille kleiner?</translation>
    </message>
    <message>
        <source>drooping lid with a small pupil</source>
        <extracomment>neck-drooping-lid</extracomment>
        <translation>hängendes Augenlid mit kleiner Pupille</translation>
    </message>
    <message>
        <source>In the last month, did you have a neck strain or blow, or a bad infection?</source>
        <extracomment>neck-vessel-risk, as it is asked</extracomment>
        <translation>Hatten Sie im letzten Monat eine Halszerrung, einen Schlag am Hals oder eine schwere Infektion?</translation>
    </message>
    <message>
        <source>risk of the neck vessels</source>
        <extracomment>neck-vessel-risk</extracomment>
        <translation>Risiko für die Halsgefäße</translation>
    </message>
    <message>
        <source>Is the upper blood pressure number 180 or more, or the lower one 120 or more?</source>
        <extracomment>very-high-blood-pressure, as it is asked</extracomment>
        <translation>Ist der obere Blutdruckwert 180 oder mehr oder der untere 120 oder mehr?</translation>
    </message>
    <message>
        <source>very high blood pressure</source>
        <extracomment>very-high-blood-pressure</extracomment>
        <translation>sehr hoher Blutdruck</translation>
    </message>
    <message>
        <source>Have your hands become numb or clumsy, as with buttons, keys or writing?</source>
        <extracomment>cord-clumsy-hands, as it is asked</extracomment>
        <translation>Sind Ihre Hände taub oder ungeschickt geworden, etwa bei Knöpfen, Schlüsseln oder beim Schreiben?</translation>
    </message>
    <message>
        <source>clumsy or numb hands</source>
        <extracomment>cord-clumsy-hands</extracomment>
        <translation>ungeschickte oder taube Hände</translation>
    </message>
    <message>
        <source>Have your legs become stiff, heavy or unsteady, so that you trip or hold on?</source>
        <extracomment>cord-unsteady-legs, as it is asked</extracomment>
        <translation>Sind Ihre Beine steif, schwer oder unsicher geworden, sodass Sie stolpern oder sich festhalten?</translation>
    </message>
    <message>
        <source>unsteady, heavy or stiff legs</source>
        <extracomment>cord-unsteady-legs</extracomment>
        <translation>unsichere, schwere oder steife Beine</translation>
    </message>
    <message>
        <source>Does bending your head send an electric shock down your back, arms or legs?</source>
        <extracomment>cord-electric-shock-on-bending, as it is asked</extracomment>
        <translation>Schießt es beim Beugen des Kopfes wie ein Stromschlag in Rücken, Arme oder Beine?</translation>
    </message>
    <message>
        <source>electric shock down the spine on bending the neck</source>
        <extracomment>cord-electric-shock-on-bending</extracomment>
        <translation>Gefühl wie ein Stromschlag die Wirbelsäule hinab beim Beugen des Halses</translation>
    </message>
    <message>
        <source>Are knee jerks very brisk, does the big toe go up, or does the finger flick test show?</source>
        <extracomment>cord-reflex-signs, as it is asked</extracomment>
        <translation>Sind die Kniereflexe sehr lebhaft, geht die Großzehe hoch, oder zeigt sich der Knipsreflex?</translation>
    </message>
    <message>
        <source>brisk reflexes, upgoing toe, finger flick sign</source>
        <extracomment>cord-reflex-signs</extracomment>
        <translation>lebhafte Reflexe, Großzehe nach oben, Knipsreflex am Finger</translation>
    </message>
    <message>
        <source>Have you had cancer, and now have a tight band of pain, weak legs or poor balance?</source>
        <extracomment>cord-pain-band-with-cancer, as it is asked</extracomment>
        <translation>Wenn Sie Krebs hatten oder haben: Haben Sie jetzt enge, gürtelförmige Schmerzen, schwache Beine oder schlechtes Gleichgewicht?</translation>
    </message>
    <message>
        <source>band of pain or weak legs with a cancer history</source>
        <extracomment>cord-pain-band-with-cancer</extracomment>
        <translation>gürtelförmige Schmerzen oder schwache Beine bei Krebs in der Vorgeschichte</translation>
    </message>
    <message>
        <source>Must you hold up your head, or does your neck feel as if it may slip?</source>
        <extracomment>neck-head-feels-unsupported, as it is asked</extracomment>
        <translation>Müssen Sie Ihren Kopf stützen, oder fühlt sich Ihr Hals an, als könnte er wegrutschen?</translation>
    </message>
    <message>
        <source>head feels too heavy for the neck</source>
        <extracomment>neck-head-feels-unsupported</extracomment>
        <translation>Gefühl, dass der Kopf zu schwer für den Hals ist</translation>
    </message>
    <message>
        <source>Were you told that you have rheumatoid disease, Down syndrome or very loose joints?</source>
        <extracomment>neck-known-instability-risk, as it is asked</extracomment>
        <translation>Hat man Ihnen gesagt, dass Sie entzündliches Gelenkrheuma, das Down-Syndrom oder sehr lockere Gelenke haben?</translation>
    </message>
    <message>
        <source>rheumatoid disease, Down syndrome or very loose joints</source>
        <extracomment>neck-known-instability-risk</extracomment>
        <translation>entzündliches Gelenkrheuma, Down-Syndrom oder sehr lockere Gelenke</translation>
    </message>
    <message>
        <source>After a sore throat or an ear or neck problem, is the child&apos;s neck held to one side?</source>
        <extracomment>child-wry-neck-after-infection, as it is asked</extracomment>
        <translation>Hält das Kind nach Halsschmerzen oder Problemen an Ohr oder Nacken den Hals schief?</translation>
    </message>
    <message>
        <source>wry neck after a sore throat in a child</source>
        <extracomment>child-wry-neck-after-infection</extracomment>
        <translation>Schiefhals nach Halsschmerzen bei einem Kind</translation>
    </message>
    <message>
        <source>Did you hurt your neck in this injury, with no X-ray or scan of it since?</source>
        <extracomment>neck-injury-age-65, as it is asked</extracomment>
        <translation>Haben Sie sich bei dem Unfall den Hals verletzt, ohne Röntgen, CT oder MRT seither?</translation>
    </message>
    <message>
        <source>neck injury from 65 on (Canadian C-spine, high risk)</source>
        <extracomment>neck-injury-age-65</extracomment>
        <translation>Halsverletzung ab 65 Jahren (Canadian C-Spine, hohes Risiko)</translation>
    </message>
    <message>
        <source>With no neck scan since: a fall over 1 m or 5 stairs, or a blow to your crown?</source>
        <extracomment>neck-injury-dangerous-force, as it is asked</extracomment>
        <translation>Ohne CT oder MRT vom Hals seither: Sturz aus über 1 m oder von 5 Stufen? Oder ein Schlag oben auf den Kopf?</translation>
    </message>
    <message>
        <source>neck injury with dangerous force (Canadian C-spine, high risk)</source>
        <extracomment>neck-injury-dangerous-force</extracomment>
        <translation>Halsverletzung mit gefährlicher Kraft (Canadian C-Spine, hohes Risiko)</translation>
    </message>
    <message>
        <source>With no neck scan since: a fast crash, a rollover, being thrown out, or a bike crash?</source>
        <extracomment>neck-injury-traffic, as it is asked</extracomment>
        <translation>Ohne CT oder MRT vom Hals seither: Unfall mit hohem Tempo, Überschlag, Herausschleudern oder Fahrradunfall?</translation>
    </message>
    <message>
        <source>fast crash, rollover, ejection, bike or motor vehicle off road (Canadian C-spine, high risk)</source>
        <extracomment>neck-injury-traffic</extracomment>
        <translation>Unfall mit hohem Tempo, Überschlag, Herausschleudern, Unfall mit Fahrrad oder Geländefahrzeug (Canadian C-Spine, hohes Risiko)</translation>
    </message>
    <message>
        <source>Since the injury, do your arms or legs tingle, feel numb or feel weak?</source>
        <extracomment>neck-injury-tingling, as it is asked</extracomment>
        <translation>Kribbeln seit der Verletzung Ihre Arme oder Beine, oder sind sie taub oder schwach?</translation>
    </message>
    <message>
        <source>tingling in arms or legs after neck injury (Canadian C-spine, high risk)</source>
        <extracomment>neck-injury-tingling</extracomment>
        <translation>Kribbeln in Armen oder Beinen nach Halsverletzung (Canadian C-Spine, hohes Risiko)</translation>
    </message>
    <message>
        <source>Are all five missing: simple rear-end crash, sits up, has walked, late pain, no midline pain?</source>
        <extracomment>neck-injury-no-low-risk-item, as it is asked</extracomment>
        <translation>Fehlen alle fünf: einfacher Auffahrunfall, sitzt aufrecht, ist gegangen, verzögerter Schmerz, kein Schmerz der Mittellinie?</translation>
    </message>
    <message>
        <source>no low-risk item after neck injury (Canadian C-spine)</source>
        <extracomment>neck-injury-no-low-risk-item</extracomment>
        <translation>kein Punkt für niedriges Risiko nach Halsverletzung (Canadian C-Spine)</translation>
    </message>
    <message>
        <source>If all the above is no: can they not turn the neck 45 degrees both ways?</source>
        <extracomment>neck-injury-cannot-turn, as it is asked</extracomment>
        <translation>Wenn alles oben nein ist: Kann die Person den Kopf nach rechts oder links keine 45 Grad drehen?</translation>
    </message>
    <message>
        <source>cannot turn the neck 45 degrees after injury (Canadian C-spine)</source>
        <extracomment>neck-injury-cannot-turn</extracomment>
        <translation>Drehen des Halses um 45 Grad nach Verletzung nicht möglich (Canadian C-Spine)</translation>
    </message>
    <message>
        <source>Is the person under 16, drunk or drowsy, or does a worse wound hide neck pain?</source>
        <extracomment>neck-injury-rule-not-valid, as it is asked</extracomment>
        <translation>Ist die Person unter 16, betrunken oder benommen? Oder überdeckt eine schlimmere Verletzung den Nackenschmerz?</translation>
    </message>
    <message>
        <source>Canadian C-spine rule not to be used</source>
        <extracomment>neck-injury-rule-not-valid</extracomment>
        <translation>Canadian-C-Spine-Regel nicht anwendbar</translation>
    </message>
    <message>
        <source>Could you not take 4 steps right after the injury, and still cannot now?</source>
        <extracomment>leg-injury-cannot-take-four-steps, as it is asked</extracomment>
        <translation>Konnten Sie direkt nach der Verletzung keine 4 Schritte gehen und auch jetzt noch nicht?</translation>
    </message>
    <message>
        <source>cannot take four steps after injury (Ottawa ankle, foot and knee)</source>
        <extracomment>leg-injury-cannot-take-four-steps</extracomment>
        <translation>keine vier Schritte möglich nach Verletzung (Ottawa: Sprunggelenk, Fuß und Knie)</translation>
    </message>
    <message>
        <source>Is the back edge or tip of the outer ankle bone sore to press, in its last 6 cm?</source>
        <extracomment>ankle-injury-outer-bone, as it is asked</extracomment>
        <translation>Tut Druck am Außenknöchel weh, an der Hinterkante oder Spitze, auf den letzten 6 cm?</translation>
    </message>
    <message>
        <source>outer ankle bone tender (Ottawa ankle)</source>
        <extracomment>ankle-injury-outer-bone</extracomment>
        <translation>Druckschmerz am Außenknöchel (Ottawa: Sprunggelenk)</translation>
    </message>
    <message>
        <source>Is the back edge or tip of the inner ankle bone sore to press, in its last 6 cm?</source>
        <extracomment>ankle-injury-inner-bone, as it is asked</extracomment>
        <translation>Tut Druck am Innenknöchel weh, an der Hinterkante oder Spitze, auf den letzten 6 cm?</translation>
    </message>
    <message>
        <source>inner ankle bone tender (Ottawa ankle)</source>
        <extracomment>ankle-injury-inner-bone</extracomment>
        <translation>Druckschmerz am Innenknöchel (Ottawa: Sprunggelenk)</translation>
    </message>
    <message>
        <source>Is the bump on the outer edge of the foot (base of the fifth ray) sore to press?</source>
        <extracomment>foot-injury-fifth-metatarsal, as it is asked</extracomment>
        <translation>Tut Druck auf den Höcker am Außenrand des Fußes weh (Basis des fünften Strahls)?</translation>
    </message>
    <message>
        <source>base of fifth metatarsal tender (Ottawa foot)</source>
        <extracomment>foot-injury-fifth-metatarsal</extracomment>
        <translation>Druckschmerz an der Basis des fünften Mittelfußknochens (Ottawa: Fuß)</translation>
    </message>
    <message>
        <source>Is the top bone of the inner arch (the navicular) sore to press?</source>
        <extracomment>foot-injury-navicular, as it is asked</extracomment>
        <translation>Tut Druck auf den oberen Knochen am inneren Fußgewölbe weh (das Kahnbein)?</translation>
    </message>
    <message>
        <source>navicular tender (Ottawa foot)</source>
        <extracomment>foot-injury-navicular</extracomment>
        <translation>Druckschmerz am Kahnbein des Fußes (Ottawa: Fuß)</translation>
    </message>
    <message>
        <source>Did you hurt your knee in this injury, with no X-ray since?</source>
        <extracomment>knee-injury-age-55, as it is asked</extracomment>
        <translation>Haben Sie sich bei dem Unfall das Knie verletzt, ohne Röntgen seither?</translation>
    </message>
    <message>
        <source>knee injury from 55 on (Ottawa knee)</source>
        <extracomment>knee-injury-age-55</extracomment>
        <translation>Knieverletzung ab 55 Jahren (Ottawa: Knie)</translation>
    </message>
    <message>
        <source>Is the kneecap sore to press, and no other bone of the knee?</source>
        <extracomment>knee-injury-kneecap-only, as it is asked</extracomment>
        <translation>Tut Druck auf die Kniescheibe weh, aber auf keinen anderen Knochen des Knies?</translation>
    </message>
    <message>
        <source>kneecap alone tender (Ottawa knee)</source>
        <extracomment>knee-injury-kneecap-only</extracomment>
        <translation>Druckschmerz nur an der Kniescheibe (Ottawa: Knie)</translation>
    </message>
    <message>
        <source>Is the head of the fibula, on the outer side below the knee, sore to press?</source>
        <extracomment>knee-injury-fibula-head, as it is asked</extracomment>
        <translation>Tut Druck auf das Wadenbeinköpfchen weh, außen unterhalb des Knies?</translation>
    </message>
    <message>
        <source>head of fibula tender (Ottawa knee)</source>
        <extracomment>knee-injury-fibula-head</extracomment>
        <translation>Druckschmerz am Wadenbeinköpfchen (Ottawa: Knie)</translation>
    </message>
    <message>
        <source>Since the injury, can the knee not bend to a right angle?</source>
        <extracomment>knee-injury-cannot-bend-90, as it is asked</extracomment>
        <translation>Lässt sich das Knie seit der Verletzung nicht bis zum rechten Winkel beugen?</translation>
    </message>
    <message>
        <source>knee will not bend to 90 degrees (Ottawa knee)</source>
        <extracomment>knee-injury-cannot-bend-90</extracomment>
        <translation>Knie nicht bis 90 Grad beugbar (Ottawa: Knie)</translation>
    </message>
    <message>
        <source>Since the injury, can you not get your elbow straight?</source>
        <extracomment>elbow-injury-cannot-straighten, as it is asked</extracomment>
        <translation>Bekommen Sie den Ellenbogen seit der Verletzung nicht mehr gerade?</translation>
    </message>
    <message>
        <source>elbow will not straighten after injury</source>
        <extracomment>elbow-injury-cannot-straighten</extracomment>
        <translation>Ellenbogen nach Verletzung nicht gerade zu strecken</translation>
    </message>
    <message>
        <source>After a fall on the hand, does the hollow at the base of the thumb hurt to press?</source>
        <extracomment>wrist-injury-snuffbox, as it is asked</extracomment>
        <translation>Tut nach einem Sturz auf die Hand Druck in die Grube am Daumenansatz weh?</translation>
    </message>
    <message>
        <source>pain at the thumb side of the wrist after a fall</source>
        <extracomment>wrist-injury-snuffbox</extracomment>
        <translation>Schmerz an der Daumenseite des Handgelenks nach einem Sturz</translation>
    </message>
    <message>
        <source>Since the injury, is the limb bent, out of shape, or is the skin torn over bone?</source>
        <extracomment>injury-deformed-limb, as it is asked</extracomment>
        <translation>Ist Arm oder Bein seit der Verletzung krumm oder verformt? Oder ist die Haut über dem Knochen aufgerissen?</translation>
    </message>
    <message>
        <source>deformity, out of joint, or bone through the skin</source>
        <extracomment>injury-deformed-limb</extracomment>
        <translation>Verformung, ausgerenktes Gelenk oder Knochen durch die Haut</translation>
    </message>
    <message>
        <source>After the fall, does the leg look shorter or turned out, or can they not lift it?</source>
        <extracomment>hip-injury-short-turned-leg, as it is asked</extracomment>
        <translation>Sieht das Bein nach dem Sturz kürzer oder nach außen gedreht aus? Oder kann die Person es nicht heben?</translation>
    </message>
    <message>
        <source>leg short and turned out after a fall</source>
        <extracomment>hip-injury-short-turned-leg</extracomment>
        <translation>Bein nach einem Sturz verkürzt und nach außen gedreht</translation>
    </message>
    <message>
        <source>Did this back pain start with a bad fall, a crash or a hard blow?</source>
        <extracomment>major-trauma-spine, as it is asked</extracomment>
        <translation>Begannen diese Rückenschmerzen mit einem schweren Sturz, einem Unfall oder einem harten Schlag?</translation>
    </message>
    <message>
        <source>spine pain after major injury</source>
        <extracomment>major-trauma-spine</extracomment>
        <translation>Schmerzen der Wirbelsäule nach schwerer Verletzung</translation>
    </message>
    <message>
        <source>Did a small fall, a lift or a cough start this pain?</source>
        <extracomment>minor-injury-weak-bone, as it is asked</extracomment>
        <translation>Begann dieser Schmerz nach einem kleinen Sturz, beim Heben oder beim Husten?</translation>
    </message>
    <message>
        <source>spine or rib pain after a slight fall with weak bone</source>
        <extracomment>minor-injury-weak-bone</extracomment>
        <translation>Schmerzen an Wirbelsäule oder Rippen nach leichtem Sturz bei schwachem Knochen</translation>
    </message>
    <message>
        <source>Have you taken steroid pills for 3 months or more?</source>
        <extracomment>long-steroid-use, as it is asked</extracomment>
        <translation>Haben Sie 3 Monate oder länger Kortison-Tabletten (Steroide) genommen?</translation>
    </message>
    <message>
        <source>long steroid use</source>
        <extracomment>long-steroid-use</extracomment>
        <translation>lange Einnahme von Kortison (Steroiden)</translation>
    </message>
    <message>
        <source>Do you have thin bones, or has a small fall broken a bone?</source>
        <extracomment>known-thin-bone, as it is asked</extracomment>
        <translation>Haben Sie dünne Knochen, oder ist bei einem kleinen Sturz ein Knochen gebrochen?</translation>
    </message>
    <message>
        <source>thin bone or break after a slight fall</source>
        <extracomment>known-thin-bone</extracomment>
        <translation>dünner Knochen oder Bruch nach leichtem Sturz</translation>
    </message>
    <message>
        <source>Does running or hopping bring on a deep pain in your groin or thigh?</source>
        <extracomment>stress-fracture-groin, as it is asked</extracomment>
        <translation>Bekommen Sie beim Rennen oder Hüpfen einen tiefen Schmerz in Leiste oder Oberschenkel?</translation>
    </message>
    <message>
        <source>groin pain with running or marching</source>
        <extracomment>stress-fracture-groin</extracomment>
        <translation>Leistenschmerzen beim Rennen oder Marschieren</translation>
    </message>
    <message>
        <source>Is a limb swollen hard and tight, with pain far worse than you would expect?</source>
        <extracomment>compartment-signs, as it is asked</extracomment>
        <translation>Ist ein Arm oder Bein hart und prall geschwollen, mit viel stärkeren Schmerzen als erwartet?</translation>
    </message>
    <message>
        <source>pain far beyond the injury, tight and numb limb</source>
        <extracomment>compartment-signs</extracomment>
        <translation>Schmerz weit über die Verletzung hinaus, Arm oder Bein prall und taub</translation>
    </message>
    <message>
        <source>Does the muscle space feel like wood, and does moving toes or fingers hurt greatly?</source>
        <extracomment>compartment-stretch-pain, as it is asked</extracomment>
        <translation>Ist die Muskelloge hart wie Holz, und schmerzt das Bewegen von Zehen oder Fingern heftig?</translation>
    </message>
    <message>
        <source>severe pain on passive stretch in a tense limb</source>
        <extracomment>compartment-stretch-pain</extracomment>
        <translation>starker Schmerz beim passiven Dehnen in einem prallen Arm oder Bein</translation>
    </message>
    <message>
        <source>Did you feel a pop or kick at your calf or heel, and now cannot rise on your toes?</source>
        <extracomment>tendon-rupture-calf, as it is asked</extracomment>
        <translation>Nach einem gefühlten Knall oder Tritt an Wade oder Ferse: Können Sie nicht mehr auf Zehenspitzen stehen?</translation>
    </message>
    <message>
        <source>pop in the calf or heel, cannot rise on toes</source>
        <extracomment>tendon-rupture-calf</extracomment>
        <translation>Knall in Wade oder Ferse, kein Zehenstand möglich</translation>
    </message>
    <message>
        <source>Since a pop or fall, can you not lift your leg with the knee straight?</source>
        <extracomment>tendon-rupture-knee, as it is asked</extracomment>
        <translation>Können Sie seit einem Knall oder Sturz das Bein mit geradem Knie nicht heben?</translation>
    </message>
    <message>
        <source>cannot lift the straight leg after a pop at the knee</source>
        <extracomment>tendon-rupture-knee</extracomment>
        <translation>gestrecktes Bein nach einem Knall im Knie nicht zu heben</translation>
    </message>
    <message>
        <source>Did a pop or jerk in your arm leave it weak, bruised or with a new bulge?</source>
        <extracomment>tendon-rupture-arm, as it is asked</extracomment>
        <translation>Hat ein Knall oder Ruck im Arm Schwäche, einen Bluterguss oder eine neue Beule hinterlassen?</translation>
    </message>
    <message>
        <source>pop in shoulder or elbow with lost strength</source>
        <extracomment>tendon-rupture-arm</extracomment>
        <translation>Knall in Schulter oder Ellenbogen mit Verlust an Kraft</translation>
    </message>
    <message>
        <source>Is one leg or calf newly swollen, sore, warm or red?</source>
        <extracomment>leg-clot-suspicion, as it is asked</extracomment>
        <translation>Ist ein Bein oder eine Wade neu geschwollen, schmerzhaft, warm oder rot?</translation>
    </message>
    <message>
        <source>one leg newly swollen, sore, warm or red</source>
        <extracomment>leg-clot-suspicion</extracomment>
        <translation>ein Bein neu geschwollen, schmerzhaft, warm oder rot</translation>
    </message>
    <message>
        <source>Do you have cancer now, or were you treated for it in the last 6 months?</source>
        <extracomment>leg-clot-cancer, as it is asked</extracomment>
        <translation>Haben Sie jetzt Krebs, oder wurden Sie in den letzten 6 Monaten dagegen behandelt?</translation>
    </message>
    <message>
        <source>leg clot score: active cancer (1 point)</source>
        <extracomment>leg-clot-cancer</extracomment>
        <translation>Punktzahl Beinthrombose: aktiver Krebs (1 Punkt)</translation>
    </message>
    <message>
        <source>Is your leg in a cast, or was it lately, or is it weak from nerve or brain trouble?</source>
        <extracomment>leg-clot-plaster-or-palsy, as it is asked</extracomment>
        <translation>Ist Ihr Bein im Gips, oder war es das vor Kurzem? Oder ist es durch ein Nerven- oder Gehirnleiden schwach?</translation>
    </message>
    <message>
        <source>leg clot score: paralysis or plaster (1 point)</source>
        <extracomment>leg-clot-plaster-or-palsy</extracomment>
        <translation>Punktzahl Beinthrombose: Lähmung oder Gips (1 Punkt)</translation>
    </message>
    <message>
        <source>Were you just in bed for 3 days or more, or had big surgery in the last 12 weeks?</source>
        <extracomment>leg-clot-bed-or-surgery, as it is asked</extracomment>
        <translation>Lagen Sie vor Kurzem 3 Tage oder länger im Bett? Oder hatten Sie in den letzten 12 Wochen eine große Operation?</translation>
    </message>
    <message>
        <source>leg clot score: in bed 3 days, or major surgery within 12 weeks (1 point)</source>
        <extracomment>leg-clot-bed-or-surgery</extracomment>
        <translation>Punktzahl Beinthrombose: 3 Tage im Bett oder große Operation in den letzten 12 Wochen (1 Punkt)</translation>
    </message>
    <message>
        <source>Is it sore to a light touch along the deep veins of calf or inner thigh?</source>
        <extracomment>leg-clot-deep-vein-tender, as it is asked</extracomment>
        <translation>Ist leichte Berührung entlang der tiefen Venen an Wade oder Innenseite des Oberschenkels schmerzhaft?</translation>
    </message>
    <message>
        <source>leg clot score: tender along the deep veins (1 point)</source>
        <extracomment>leg-clot-deep-vein-tender</extracomment>
        <translation>Punktzahl Beinthrombose: Druckschmerz entlang der tiefen Venen (1 Punkt)</translation>
    </message>
    <message>
        <source>Is one whole leg swollen?</source>
        <extracomment>leg-clot-whole-leg-swollen, as it is asked</extracomment>
        <translation>Ist ein ganzes Bein geschwollen?</translation>
    </message>
    <message>
        <source>leg clot score: entire leg swollen (1 point)</source>
        <extracomment>leg-clot-whole-leg-swollen</extracomment>
        <translation>Punktzahl Beinthrombose: ganzes Bein geschwollen (1 Punkt)</translation>
    </message>
    <message>
        <source>Is the calf at least 3 cm larger than the other, 10 cm below the bump of the shin?</source>
        <extracomment>leg-clot-calf-3-cm, as it is asked</extracomment>
        <translation>Ist die Wade mindestens 3 cm dicker als die andere, 10 cm unter dem Schienbeinhöcker?</translation>
    </message>
    <message>
        <source>leg clot score: calf 3 cm larger (1 point)</source>
        <extracomment>leg-clot-calf-3-cm</extracomment>
        <translation>Punktzahl Beinthrombose: Wade 3 cm dicker (1 Punkt)</translation>
    </message>
    <message>
        <source>Does a thumb leave a dent in the sore leg, and not in the other?</source>
        <extracomment>leg-clot-pitting, as it is asked</extracomment>
        <translation>Hinterlässt ein Daumendruck im schmerzenden Bein eine Delle und im anderen nicht?</translation>
    </message>
    <message>
        <source>leg clot score: pitting in this leg only (1 point)</source>
        <extracomment>leg-clot-pitting</extracomment>
        <translation>Punktzahl Beinthrombose: eindrückbare Schwellung nur an diesem Bein (1 Punkt)</translation>
    </message>
    <message>
        <source>Do you see new full veins under the skin of this leg that are not varicose?</source>
        <extracomment>leg-clot-side-veins, as it is asked</extracomment>
        <translation>Sehen Sie an diesem Bein neue, volle Venen unter der Haut, die keine Krampfadern sind?</translation>
    </message>
    <message>
        <source>leg clot score: new surface veins, not varicose (1 point)</source>
        <extracomment>leg-clot-side-veins</extracomment>
        <translation>Punktzahl Beinthrombose: neue oberflächliche Venen, keine Krampfadern (1 Punkt)</translation>
    </message>
    <message>
        <source>Have you ever had a clot in a deep vein of your leg?</source>
        <extracomment>leg-clot-before, as it is asked</extracomment>
        <translation>Hatten Sie schon einmal ein Blutgerinnsel in einer tiefen Vene Ihres Beins?</translation>
    </message>
    <message>
        <source>leg clot score: earlier deep vein clot (1 point)</source>
        <extracomment>leg-clot-before</extracomment>
        <translation>Punktzahl Beinthrombose: früheres Gerinnsel in einer tiefen Vene (1 Punkt)</translation>
    </message>
    <message>
        <source>Is some other cause at least as likely as a clot?</source>
        <extracomment>leg-clot-other-cause, as it is asked</extracomment>
        <translation>Ist eine andere Ursache mindestens so wahrscheinlich wie ein Blutgerinnsel?</translation>
    </message>
    <message>
        <source>leg clot score: other cause at least as likely (minus 2 points)</source>
        <extracomment>leg-clot-other-cause</extracomment>
        <translation>Punktzahl Beinthrombose: andere Ursache mindestens so wahrscheinlich (minus 2 Punkte)</translation>
    </message>
    <message>
        <source>Is one arm newly swollen, heavy or blue?</source>
        <extracomment>arm-swollen-blue, as it is asked</extracomment>
        <translation>Ist ein Arm neu geschwollen, schwer oder blau?</translation>
    </message>
    <message>
        <source>one arm newly swollen or blue</source>
        <extracomment>arm-swollen-blue</extracomment>
        <translation>ein Arm neu geschwollen oder blau</translation>
    </message>
    <message>
        <source>Do you feel very ill, confused, or so weak that you can hardly stand?</source>
        <extracomment>very-ill-now, as it is asked</extracomment>
        <translation>Fühlen Sie sich sehr krank, verwirrt oder so schwach, dass Sie kaum stehen können?</translation>
    </message>
    <message>
        <source>very ill, confused, cold sweat or mottled skin</source>
        <extracomment>very-ill-now</extracomment>
        <translation>schwer krank, verwirrt, kalter Schweiß oder marmorierte Haut</translation>
    </message>
    <message>
        <source>Do you have a fever, chills or shakes?</source>
        <extracomment>fever-now, as it is asked</extracomment>
        <translation>Haben Sie Fieber, Frösteln oder Schüttelfrost?</translation>
    </message>
    <message>
        <source>fever or chills</source>
        <extracomment>fever-now</extracomment>
        <translation>Fieber, Frösteln oder Schüttelfrost</translation>
    </message>
    <message>
        <source>Is one joint hot, red and swollen, and very sore to move?</source>
        <extracomment>hot-joint, as it is asked</extracomment>
        <translation>Ist ein Gelenk heiß, rot und geschwollen und tut beim Bewegen sehr weh?</translation>
    </message>
    <message>
        <source>single hot, swollen joint</source>
        <extracomment>hot-joint</extracomment>
        <translation>ein einzelnes heißes, geschwollenes Gelenk</translation>
    </message>
    <message>
        <source>With this hot or very sore joint, do you have a fever or feel ill?</source>
        <extracomment>hot-joint-with-fever, as it is asked</extracomment>
        <translation>Haben Sie zu diesem heißen oder sehr schmerzhaften Gelenk Fieber, oder fühlen Sie sich krank?</translation>
    </message>
    <message>
        <source>hot joint with fever</source>
        <extracomment>hot-joint-with-fever</extracomment>
        <translation>heißes Gelenk mit Fieber</translation>
    </message>
    <message>
        <source>Is red, hot skin fast spreading, or far more sore than it looks?</source>
        <extracomment>spreading-redness, as it is asked</extracomment>
        <translation>Breitet sich rote, heiße Haut schnell aus oder schmerzt viel mehr, als man ihr ansieht?</translation>
    </message>
    <message>
        <source>fast spreading redness with great pain</source>
        <extracomment>spreading-redness</extracomment>
        <translation>schnell fortschreitende Rötung mit starkem Schmerz</translation>
    </message>
    <message>
        <source>Did this back pain start after a fever, surgery, or the use of needle drugs?</source>
        <extracomment>spine-infection-risk, as it is asked</extracomment>
        <translation>Begannen diese Rückenschmerzen nach Fieber, einer Operation oder dem Spritzen von Drogen?</translation>
    </message>
    <message>
        <source>back pain with infection risk</source>
        <extracomment>spine-infection-risk</extracomment>
        <translation>Rückenschmerzen mit Risiko für eine Infektion</translation>
    </message>
    <message>
        <source>Do you have a weak immune system, or take drugs that weaken it?</source>
        <extracomment>weak-immune-system, as it is asked</extracomment>
        <translation>Haben Sie ein schwaches Immunsystem, oder nehmen Sie Mittel, die es schwächen?</translation>
    </message>
    <message>
        <source>weak defence against infection</source>
        <extracomment>weak-immune-system</extracomment>
        <translation>schwache Abwehr gegen Infektionen</translation>
    </message>
    <message>
        <source>Do you have a sore strip of blisters or rash on one side?</source>
        <extracomment>shingles-rash, as it is asked</extracomment>
        <translation>Haben Sie auf einer Seite einen schmerzhaften Streifen mit Bläschen oder Ausschlag?</translation>
    </message>
    <message>
        <source>band of pain or blisters on one side</source>
        <extracomment>shingles-rash</extracomment>
        <translation>Schmerz oder Bläschen wie ein Band auf einer Seite</translation>
    </message>
    <message>
        <source>Have you ever had cancer?</source>
        <extracomment>past-cancer, as it is asked</extracomment>
        <translation>Haben Sie Krebs, oder hatten Sie je Krebs?</translation>
    </message>
    <message>
        <source>cancer now or before</source>
        <extracomment>past-cancer</extracomment>
        <translation>Krebs, jetzt oder früher</translation>
    </message>
    <message>
        <source>Have you lost weight without trying, or do you sweat through your sheets at night?</source>
        <extracomment>weight-loss, as it is asked</extracomment>
        <translation>Haben Sie ungewollt abgenommen, oder schwitzen Sie nachts Ihr Bettzeug durch?</translation>
    </message>
    <message>
        <source>weight loss or drenching night sweats</source>
        <extracomment>weight-loss</extracomment>
        <translation>Gewichtsverlust oder starker, durchnässender Nachtschweiß</translation>
    </message>
    <message>
        <source>Does pain wake you at night, with no way to lie that eases it?</source>
        <extracomment>night-rest-pain, as it is asked</extracomment>
        <translation>Weckt Sie nachts ein Schmerz, der in keiner Lage nachlässt?</translation>
    </message>
    <message>
        <source>night or rest pain that no position eases</source>
        <extracomment>night-rest-pain</extracomment>
        <translation>Schmerz nachts oder in Ruhe, der in keiner Lage nachlässt</translation>
    </message>
    <message>
        <source>Do you have a new lump, in a breast or elsewhere, or one that grows?</source>
        <extracomment>new-lump, as it is asked</extracomment>
        <translation>Haben Sie einen neuen Knoten, in einer Brust oder anderswo, oder einen, der wächst?</translation>
    </message>
    <message>
        <source>new or growing lump</source>
        <extracomment>new-lump</extracomment>
        <translation>neuer oder wachsender Knoten</translation>
    </message>
    <message>
        <source>Is an arm or leg getting weaker from day to day, or does your foot drop?</source>
        <extracomment>progressive-weakness, as it is asked</extracomment>
        <translation>Wird ein Arm oder Bein von Tag zu Tag schwächer, oder hängt Ihr Fuß herab?</translation>
    </message>
    <message>
        <source>weakness that gets worse</source>
        <extracomment>progressive-weakness</extracomment>
        <translation>zunehmende Schwäche</translation>
    </message>
    <message>
        <source>Do you bruise or bleed for no clear reason, or do you have liver disease?</source>
        <extracomment>easy-bleeding, as it is asked</extracomment>
        <translation>Bekommen Sie ohne klaren Grund blaue Flecken oder Blutungen? Oder haben Sie eine Leberkrankheit?</translation>
    </message>
    <message>
        <source>easy bruising or bleeding, liver or platelet trouble</source>
        <extracomment>easy-bleeding</extracomment>
        <translation>Neigung zu blauen Flecken oder Blutungen, Problem mit Leber oder Blutplättchen</translation>
    </message>
    <message>
        <source>Do you take a blood thinner, and did groin, thigh or back pain come on at once?</source>
        <extracomment>blood-thinner-new-deep-pain, as it is asked</extracomment>
        <translation>Kamen plötzlich Schmerzen in Leiste, Oberschenkel oder Rücken, während Sie einen Blutverdünner nehmen?</translation>
    </message>
    <message>
        <source>sudden groin, thigh or back pain on a blood thinner</source>
        <extracomment>blood-thinner-new-deep-pain</extracomment>
        <translation>plötzliche Schmerzen in Leiste, Oberschenkel oder Rücken bei Einnahme eines Blutverdünners</translation>
    </message>
    <message>
        <source>Did an earlier treatment leave you with blisters, burns, strong pain or numbness?</source>
        <extracomment>bad-reaction-last-time, as it is asked</extracomment>
        <translation>Hatten Sie nach einer früheren Behandlung Blasen, Verbrennungen, starke Schmerzen oder ein taubes Gefühl?</translation>
    </message>
    <message>
        <source>bad reaction to earlier hands-on treatment</source>
        <extracomment>bad-reaction-last-time</extracomment>
        <translation>schlechte Reaktion auf eine frühere Behandlung mit den Händen</translation>
    </message>
    <message>
        <source>Is it newly hard to start, stop or feel passing water?</source>
        <extracomment>cauda-equina-bladder, as it is asked</extracomment>
        <translation>Fällt es Ihnen neuerdings schwer, das Wasserlassen zu beginnen, anzuhalten oder zu spüren?</translation>
    </message>
    <message>
        <source>change of bladder with back or leg pain</source>
        <extracomment>cauda-equina-bladder</extracomment>
        <translation>Veränderung beim Wasserlassen bei Rücken- oder Beinschmerzen</translation>
    </message>
    <message>
        <source>Do you leak stool, or no longer feel when you must go?</source>
        <extracomment>cauda-equina-bowel, as it is asked</extracomment>
        <translation>Verlieren Sie Stuhl, oder spüren Sie nicht mehr, wann Sie zur Toilette müssen?</translation>
    </message>
    <message>
        <source>change of bowel with back or leg pain</source>
        <extracomment>cauda-equina-bowel</extracomment>
        <translation>Veränderung beim Stuhlgang bei Rücken- oder Beinschmerzen</translation>
    </message>
    <message>
        <source>Is it numb or odd between your legs, where you sit or wipe?</source>
        <extracomment>cauda-equina-saddle, as it is asked</extracomment>
        <translation>Ist es zwischen den Beinen, wo Sie sitzen oder sich abwischen, taub oder seltsam?</translation>
    </message>
    <message>
        <source>saddle numbness</source>
        <extracomment>cauda-equina-saddle</extracomment>
        <translation>Taubheit zwischen den Beinen (Reithosenbereich)</translation>
    </message>
    <message>
        <source>Have both legs become weak or numb in the last 2 weeks?</source>
        <extracomment>cauda-equina-both-legs-weak, as it is asked</extracomment>
        <translation>Sind in den letzten 2 Wochen beide Beine schwach oder taub geworden?</translation>
    </message>
    <message>
        <source>weakness of both legs</source>
        <extracomment>cauda-equina-both-legs-weak</extracomment>
        <translation>Schwäche beider Beine</translation>
    </message>
    <message>
        <source>Has pain begun to shoot down both legs, new or worse in the last 2 weeks?</source>
        <extracomment>cauda-equina-both-legs-pain, as it is asked</extracomment>
        <translation>Schießen Schmerzen in beide Beine hinunter, neu oder schlimmer in den letzten 2 Wochen?</translation>
    </message>
    <message>
        <source>new pain down both legs</source>
        <extracomment>cauda-equina-both-legs-pain</extracomment>
        <translation>neue Schmerzen in beide Beine hinunter</translation>
    </message>
    <message>
        <source>Have you newly lost feeling or function in sex?</source>
        <extracomment>cauda-equina-sexual, as it is asked</extracomment>
        <translation>Haben Sie beim Sex neuerdings Gefühl oder Funktion verloren?</translation>
    </message>
    <message>
        <source>new change of sexual feeling or function</source>
        <extracomment>cauda-equina-sexual</extracomment>
        <translation>neue Veränderung des sexuellen Gefühls oder der sexuellen Funktion</translation>
    </message>
    <message>
        <source>Do you have very bad belly pain, a hard belly, or are you vomiting blood?</source>
        <extracomment>severe-belly-pain, as it is asked</extracomment>
        <translation>Haben Sie sehr starke Bauchschmerzen oder einen harten Bauch, oder erbrechen Sie Blut?</translation>
    </message>
    <message>
        <source>severe or rigid abdomen</source>
        <extracomment>severe-belly-pain</extracomment>
        <translation>sehr starke Bauchschmerzen oder brettharter Bauch</translation>
    </message>
    <message>
        <source>With this side or back pain, does it burn to pass water, or is there blood in it?</source>
        <extracomment>flank-pain-fever-urine, as it is asked</extracomment>
        <translation>Brennt bei diesem Schmerz in Seite oder Rücken das Wasserlassen, oder ist Blut im Urin?</translation>
    </message>
    <message>
        <source>flank pain with fever or blood in urine</source>
        <extracomment>flank-pain-fever-urine</extracomment>
        <translation>Flankenschmerz mit Fieber oder Blut im Urin</translation>
    </message>
    <message>
        <source>Does this pain come with meals, stool or your cycle, and not when you move?</source>
        <extracomment>pain-with-meals-or-effortless, as it is asked</extracomment>
        <translation>Kommt dieser Schmerz mit Essen, Stuhlgang oder Ihrem Zyklus, und nicht beim Bewegen?</translation>
    </message>
    <message>
        <source>pain tied to meals, bowel or cycle and not to movement</source>
        <extracomment>pain-with-meals-or-effortless</extracomment>
        <translation>Schmerz, der an Mahlzeiten, Darm oder Zyklus hängt und nicht an Bewegung</translation>
    </message>
    <message>
        <source>Could you be pregnant, and do you bleed or have pain in belly or shoulder tip?</source>
        <extracomment>early-pregnancy-pelvic-pain, as it is asked</extracomment>
        <translation>Könnten Sie schwanger sein, und bluten Sie oder haben Schmerzen in Bauch oder Schulterspitze?</translation>
    </message>
    <message>
        <source>pelvic or shoulder tip pain with a missed period</source>
        <extracomment>early-pregnancy-pelvic-pain</extracomment>
        <translation>Schmerzen in Becken oder Schulterspitze bei ausgebliebener Periode</translation>
    </message>
    <message>
        <source>If you have testicles: is one newly sore or swollen?</source>
        <extracomment>testicle-pain, as it is asked</extracomment>
        <translation>Wenn Sie Hoden haben: Ist einer neu schmerzhaft oder geschwollen?</translation>
    </message>
    <message>
        <source>sudden pain or swelling of a testicle</source>
        <extracomment>testicle-pain</extracomment>
        <translation>plötzlicher Schmerz oder plötzliche Schwellung eines Hodens</translation>
    </message>
    <message>
        <source>Is there a hard, sore lump in your groin that will not slip back?</source>
        <extracomment>groin-lump-hard-sore, as it is asked</extracomment>
        <translation>Haben Sie in der Leiste eine harte, schmerzhafte Beule, die nicht zurückgeht?</translation>
    </message>
    <message>
        <source>hard, sore lump in the groin that will not go back</source>
        <extracomment>groin-lump-hard-sore</extracomment>
        <translation>harte, schmerzhafte Beule in der Leiste, die nicht zurückgeht</translation>
    </message>
    <message>
        <source>Is there a lump in your groin, or one that beats?</source>
        <extracomment>groin-lump-or-pulse, as it is asked</extracomment>
        <translation>Haben Sie in der Leiste eine Beule, oder eine, die pocht?</translation>
    </message>
    <message>
        <source>lump or pulsation in the groin</source>
        <extracomment>groin-lump-or-pulse</extracomment>
        <translation>Beule oder Pochen in der Leiste</translation>
    </message>
    <message>
        <source>Did hip or groin pain start so fast or so strong that you cannot stand on that leg?</source>
        <extracomment>hip-sudden-cannot-bear, as it is asked</extracomment>
        <translation>Begann der Hüft- oder Leistenschmerz so schnell oder stark, dass dieses Bein Sie nicht trägt?</translation>
    </message>
    <message>
        <source>sudden hip pain, cannot bear weight</source>
        <extracomment>hip-sudden-cannot-bear</extracomment>
        <translation>plötzlicher Hüftschmerz, Bein nicht belastbar</translation>
    </message>
    <message>
        <source>Have you had groin pain with steroid pills, heavy drinking or deep dives?</source>
        <extracomment>hip-blood-supply-risk, as it is asked</extracomment>
        <translation>Hatten Sie Leistenschmerzen in Verbindung mit Kortison-Tabletten, viel Alkohol oder tiefem Tauchen?</translation>
    </message>
    <message>
        <source>groin pain with steroid use, heavy drinking or diving</source>
        <extracomment>hip-blood-supply-risk</extracomment>
        <translation>Leistenschmerzen bei Kortison (Steroiden), viel Alkohol oder Tauchen</translation>
    </message>
    <message>
        <source>With the hip pain, is your groin or thigh swollen or numb?</source>
        <extracomment>hip-swelling-or-numbness, as it is asked</extracomment>
        <translation>Ist bei dem Hüftschmerz die Leiste oder der Oberschenkel geschwollen oder taub?</translation>
    </message>
    <message>
        <source>groin swelling or numbness with hip pain</source>
        <extracomment>hip-swelling-or-numbness</extracomment>
        <translation>Schwellung der Leiste oder Taubheit bei Hüftschmerzen</translation>
    </message>
    <message>
        <source>Is there new pain, heat or a leak at a joint that was replaced?</source>
        <extracomment>replaced-joint-new-pain, as it is asked</extracomment>
        <translation>Ist ein künstliches Gelenk neu schmerzhaft oder heiß, oder läuft dort etwas heraus?</translation>
    </message>
    <message>
        <source>new pain in a replaced joint</source>
        <extracomment>replaced-joint-new-pain</extracomment>
        <translation>neuer Schmerz in einem künstlichen Gelenk</translation>
    </message>
    <message>
        <source>Do you have a bad headache, spots before your eyes, or pain below your ribs?</source>
        <extracomment>pregnancy-headache-sight, as it is asked</extracomment>
        <translation>Haben Sie starke Kopfschmerzen, Flecken vor den Augen oder Schmerzen unter den Rippen?</translation>
    </message>
    <message>
        <source>pregnancy: severe headache, sight trouble, pain below the ribs</source>
        <extracomment>pregnancy-headache-sight</extracomment>
        <translation>Schwangerschaft: starke Kopfschmerzen, Sehprobleme, Schmerzen unter den Rippen</translation>
    </message>
    <message>
        <source>Have your face, hands or feet swollen up all at once?</source>
        <extracomment>pregnancy-sudden-swelling, as it is asked</extracomment>
        <translation>Sind Gesicht, Hände oder Füße plötzlich angeschwollen?</translation>
    </message>
    <message>
        <source>pregnancy: sudden swelling of face or hands</source>
        <extracomment>pregnancy-sudden-swelling</extracomment>
        <translation>Schwangerschaft: plötzliche Schwellung von Gesicht oder Händen</translation>
    </message>
    <message>
        <source>Do you bleed or leak water, or have belly pains that come and go?</source>
        <extracomment>pregnancy-bleeding-or-fluid, as it is asked</extracomment>
        <translation>Bluten Sie, verlieren Sie Flüssigkeit (Fruchtwasser), oder haben Sie Bauchschmerzen, die kommen und gehen?</translation>
    </message>
    <message>
        <source>pregnancy: bleeding, fluid, or regular pains before term</source>
        <extracomment>pregnancy-bleeding-or-fluid</extracomment>
        <translation>Schwangerschaft: Blutung, Flüssigkeit oder regelmäßige Schmerzen vor der Zeit</translation>
    </message>
    <message>
        <source>Does your baby move less than it did, or not at all?</source>
        <extracomment>pregnancy-child-moves-less, as it is asked</extracomment>
        <translation>Bewegt sich Ihr Baby weniger als vorher oder gar nicht?</translation>
    </message>
    <message>
        <source>pregnancy: child moves less</source>
        <extracomment>pregnancy-child-moves-less</extracomment>
        <translation>Schwangerschaft: Kind bewegt sich weniger</translation>
    </message>
    <message>
        <source>Did you give birth in the last 6 weeks, and now have a bad headache or pain below the ribs?</source>
        <extracomment>after-birth-headache, as it is asked</extracomment>
        <translation>Geburt in den letzten 6 Wochen: Haben Sie jetzt starke Kopfschmerzen oder Schmerzen unter den Rippen?</translation>
    </message>
    <message>
        <source>bad headache, breathlessness or rib pain within 6 weeks of birth</source>
        <extracomment>after-birth-headache</extracomment>
        <translation>starke Kopfschmerzen, Atemnot oder Rippenschmerzen in den 6 Wochen nach der Geburt</translation>
    </message>
    <message>
        <source>Do you have a sore, a black spot or a hot, swollen foot with poor feeling?</source>
        <extracomment>numb-foot-wound, as it is asked</extracomment>
        <translation>Ist ein Fuß mit wenig Gefühl wund, an einer Stelle schwarz oder heiß und geschwollen?</translation>
    </message>
    <message>
        <source>wound, black spot or hot swollen foot in a numb foot</source>
        <extracomment>numb-foot-wound</extracomment>
        <translation>Wunde, schwarzer Fleck oder heiße Schwellung an einem tauben Fuß</translation>
    </message>
    <message>
        <source>Since the injury, can you not lift your arm at all?</source>
        <extracomment>shoulder-lost-arm-strength-after-injury, as it is asked</extracomment>
        <translation>Können Sie den Arm seit der Verletzung gar nicht heben?</translation>
    </message>
    <message>
        <source>arm cannot be lifted after injury</source>
        <extracomment>shoulder-lost-arm-strength-after-injury</extracomment>
        <translation>Arm nach Verletzung nicht zu heben</translation>
    </message>
    <message>
        <source>Since the blow to your chest or back, is it hard to breathe?</source>
        <extracomment>chest-injury-breath, as it is asked</extracomment>
        <translation>Fällt Ihnen seit dem Schlag auf Brust oder Rücken das Atmen schwer?</translation>
    </message>
    <message>
        <source>short breath after a blow to chest or back</source>
        <extracomment>chest-injury-breath</extracomment>
        <translation>Atemnot nach einem Schlag auf Brust oder Rücken</translation>
    </message>
    <message>
        <source>Since the blow to belly or side, do you have belly pain, or feel faint?</source>
        <extracomment>belly-injury-pain, as it is asked</extracomment>
        <translation>Seit dem Schlag auf Bauch oder Seite: Haben Sie Bauchschmerzen, oder werden Sie fast ohnmächtig?</translation>
    </message>
    <message>
        <source>belly or left shoulder pain after a blow</source>
        <extracomment>belly-injury-pain</extracomment>
        <translation>Schmerzen in Bauch oder linker Schulter nach einem Schlag</translation>
    </message>
    <message>
        <source>Does the child limp or not want to walk, and have a fever or look ill?</source>
        <extracomment>child-limp-fever, as it is asked</extracomment>
        <translation>Hinkt das Kind oder will nicht gehen, und hat es Fieber oder sieht krank aus?</translation>
    </message>
    <message>
        <source>limp with fever in a child</source>
        <extracomment>child-limp-fever</extracomment>
        <translation>Hinken mit Fieber bei einem Kind</translation>
    </message>
    <message>
        <source>Does the child limp, or not want to stand or walk?</source>
        <extracomment>child-limp-young, as it is asked</extracomment>
        <translation>Hinkt das Kind, oder will es nicht stehen oder gehen?</translation>
    </message>
    <message>
        <source>limp or refusal to walk in a small child</source>
        <extracomment>child-limp-young</extracomment>
        <translation>Hinken oder Weigerung zu gehen bei einem kleinen Kind</translation>
    </message>
    <message>
        <source>Does the child or teen limp with a sore hip, thigh or knee?</source>
        <extracomment>child-limp-hip-stiff, as it is asked</extracomment>
        <translation>Hinkt das Kind oder der junge Mensch mit Schmerzen in Hüfte, Oberschenkel oder Knie?</translation>
    </message>
    <message>
        <source>hip, thigh or knee pain with limp in a child or teenager</source>
        <extracomment>child-limp-hip-stiff</extracomment>
        <translation>Schmerzen in Hüfte, Oberschenkel oder Knie mit Hinken bei einem Kind oder Teenager</translation>
    </message>
    <message>
        <source>Does bone pain wake the child, or is the child pale, tired or full of bruises?</source>
        <extracomment>child-night-bone-pain, as it is asked</extracomment>
        <translation>Wecken Knochenschmerzen das Kind? Oder ist es blass, müde oder voller blauer Flecken?</translation>
    </message>
    <message>
        <source>night bone pain, pallor or bruises in a child</source>
        <extracomment>child-night-bone-pain</extracomment>
        <translation>nächtliche Knochenschmerzen, Blässe oder blaue Flecken bei einem Kind</translation>
    </message>
    <message>
        <source>Has the child had back or neck pain for more than a few days?</source>
        <extracomment>child-back-pain, as it is asked</extracomment>
        <translation>Hat das Kind seit mehr als ein paar Tagen Rücken- oder Nackenschmerzen?</translation>
    </message>
    <message>
        <source>back pain in a young child</source>
        <extracomment>child-back-pain</extracomment>
        <translation>Rückenschmerzen bei einem jungen Kind</translation>
    </message>
    <message>
        <source>Is the child floppy, hard to wake, or with a rash that stays when a glass is pressed on it?</source>
        <extracomment>child-very-ill, as it is asked</extracomment>
        <translation>Ist das Kind schlaff oder schwer zu wecken? Oder hat es einen Ausschlag, der beim Druck mit einem Glas bleibt?</translation>
    </message>
    <message>
        <source>floppy, hard to wake, or rash that does not fade</source>
        <extracomment>child-very-ill</extracomment>
        <translation>schlaff, schwer zu wecken oder Ausschlag, der nicht verblasst</translation>
    </message>
    <message>
        <source>Does the baby have a fever, or feed poorly and cry in a new way?</source>
        <extracomment>baby-fever, as it is asked</extracomment>
        <translation>Hat das Baby Fieber? Oder trinkt es schlecht und schreit anders als sonst?</translation>
    </message>
    <message>
        <source>fever in a baby</source>
        <extracomment>baby-fever</extracomment>
        <translation>Fieber bei einem Baby</translation>
    </message>
    <message>
        <source>Is there a bruise or mark on a baby that cannot yet crawl?</source>
        <extracomment>child-bruise-before-crawling, as it is asked</extracomment>
        <translation>Hat ein Baby, das noch nicht krabbeln kann, einen blauen Fleck oder eine andere Spur?</translation>
    </message>
    <message>
        <source>bruise in a baby that does not yet move alone</source>
        <extracomment>child-bruise-before-crawling</extracomment>
        <translation>blauer Fleck bei einem Baby, das sich noch nicht allein fortbewegt</translation>
    </message>
    <message>
        <source>Does the story not fit the mark or the age, or does it change, or come late?</source>
        <extracomment>child-story-does-not-fit, as it is asked</extracomment>
        <translation>Passt die Geschichte nicht zur Spur oder zum Alter? Oder ändert sie sich, oder kommt sie spät?</translation>
    </message>
    <message>
        <source>injury and story do not fit</source>
        <extracomment>child-story-does-not-fit</extracomment>
        <translation>Widerspruch zwischen Verletzung und Geschichte</translation>
    </message>
    <message>
        <source>Are there marks in the shape of a hand, belt or bite, burns, or bruises on ears or neck?</source>
        <extracomment>child-marks-pattern, as it is asked</extracomment>
        <translation>Gibt es Spuren in der Form von Hand, Gürtel oder Biss? Oder Verbrennungen, oder blaue Flecken an Ohren oder Hals?</translation>
    </message>
    <message>
        <source>patterned marks, bites, burns, bruises on ears, neck or trunk</source>
        <extracomment>child-marks-pattern</extracomment>
        <translation>Spuren mit Muster, Bisse, Verbrennungen, blaue Flecken an Ohren, Hals oder Rumpf</translation>
    </message>
    <message>
        <source>Have you had thoughts of ending your life?</source>
        <extracomment>thoughts-of-ending-life, as it is asked</extracomment>
        <translation>Haben Sie daran gedacht, Ihr Leben zu beenden?</translation>
    </message>
    <message>
        <source>thoughts of ending their life (ask alone, plainly)</source>
        <extracomment>thoughts-of-ending-life</extracomment>
        <translation>Gedanken, das eigene Leben zu beenden (unter vier Augen und klar fragen)</translation>
    </message>
    <message>
        <source>Does anyone at home hurt you or make you feel afraid?</source>
        <extracomment>unsafe-at-home, as it is asked</extracomment>
        <translation>Tut Ihnen zu Hause jemand weh, oder macht Ihnen dort jemand Angst?</translation>
    </message>
    <message>
        <source>fear or harm at home (ask alone)</source>
        <extracomment>unsafe-at-home</extracomment>
        <translation>Angst oder Gewalt zu Hause (unter vier Augen fragen)</translation>
    </message>
    <message>
        <source>Are there marks or signs of poor care on a person who depends on others?</source>
        <extracomment>adult-neglect-or-marks, as it is asked</extracomment>
        <translation>Hat eine Person, die auf andere angewiesen ist, Spuren oder Zeichen von schlechter Pflege?</translation>
    </message>
    <message>
        <source>marks or neglect in an adult who depends on others</source>
        <extracomment>adult-neglect-or-marks</extracomment>
        <translation>Spuren oder Vernachlässigung bei einer erwachsenen Person, die auf andere angewiesen ist</translation>
    </message>
</context>
</TS>
