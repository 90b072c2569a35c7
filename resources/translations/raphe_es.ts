<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES" sourcelanguage="en">
<context>
    <name>VisitMap</name>
    <message>
        <source>What we did</source>
        <translation>Lo que hicimos</translation>
    </message>
    <message>
        <source>You did not feel well at one point. We wrote it down.</source>
        <translation>En un momento usted no se sintió bien. Lo anotamos.</translation>
    </message>
    <message>
        <source>What to do at home</source>
        <translation>Qué hacer en casa</translation>
    </message>
    <message>
        <source>What to expect</source>
        <translation>Qué puede notar</translation>
    </message>
    <message>
        <source>Call or see a doctor if</source>
        <translation>Cuándo llamar o ir al médico</translation>
    </message>
    <message>
        <source>Call the emergency number at once if:</source>
        <translation>Llame de inmediato al número de emergencias local si:</translation>
    </message>
    <message>
        <source>See a doctor today if:</source>
        <translation>Vaya hoy mismo al médico si:</translation>
    </message>
    <message>
        <source>Call us if:</source>
        <translation>Llámenos si:</translation>
    </message>
    <message>
        <source>It is not known how exact this test is.</source>
        <translation>No se sabe qué tan exacta es esta prueba.</translation>
    </message>
    <message>
        <source>That is about the same.</source>
        <translation>Es más o menos igual.</translation>
    </message>
    <message>
        <source>That is better, by more than the test can be off.</source>
        <translation>Está mejor, por más de lo que puede fallar la prueba.</translation>
    </message>
    <message>
        <source>That is worse, by more than the test can be off.</source>
        <translation>Está peor, por más de lo que puede fallar la prueba.</translation>
    </message>
    <message>
        <source>Not checked again today: {count}.</source>
        <translation>Hoy no se revisó de nuevo: {count}.</translation>
    </message>
    <message>
        <source>{before} before, {now} now.</source>
        <translation>Antes {before}, ahora {now}.</translation>
    </message>
    <message>
        <source>Your pain, from 0 to 10:</source>
        <translation>Su dolor, de 0 a 10:</translation>
    </message>
    <message>
        <source>It still hurts.</source>
        <translation>Todavía duele.</translation>
    </message>
    <message>
        <source>It hurt before. Now it does not.</source>
        <translation>Antes dolía. Ahora ya no.</translation>
    </message>
    <message>
        <source>It did not hurt before. Now it does.</source>
        <translation>Antes no dolía. Ahora sí.</translation>
    </message>
    <message>
        <source>Tests that hurt before: {before}. Of these, still sore now: {now}.</source>
        <translation>Pruebas que dolían antes: {before}. De ellas, duelen todavía: {now}.</translation>
    </message>
    <message>
        <source>Tests that hurt only now: {count}.</source>
        <translation>Pruebas que duelen solo ahora: {count}.</translation>
    </message>
    <message>
        <source>What hands feel is not exact. Take it as a hint.</source>
        <translation>Lo que sienten las manos no es exacto. Tómelo como una pista.</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Lo que cambió</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>lado izquierdo</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>lado derecho</translation>
    </message>
    <message>
        <source>{place}, in the middle</source>
        <translation>{place}, en el centro</translation>
    </message>
    <message>
        <source>not sore</source>
        <translation>no duele</translation>
    </message>
    <message>
        <source>a bit sore</source>
        <translation>duele un poco</translation>
    </message>
    <message>
        <source>sore</source>
        <translation>duele</translation>
    </message>
    <message>
        <source>very sore</source>
        <translation>duele mucho</translation>
    </message>
    <message>
        <source>sore to the least touch</source>
        <translation>duele al más leve toque</translation>
    </message>
    <message>
        <source>moves well</source>
        <translation>se mueve bien</translation>
    </message>
    <message>
        <source>moves a bit less</source>
        <translation>se mueve un poco menos</translation>
    </message>
    <message>
        <source>does not move with ease</source>
        <translation>no se mueve con facilidad</translation>
    </message>
    <message>
        <source>hardly moves</source>
        <translation>casi no se mueve</translation>
    </message>
    <message>
        <source>checked, nothing found</source>
        <translation>revisado, no se halló nada</translation>
    </message>
    <message>
        <source>checked, not sore</source>
        <translation>revisado, no duele</translation>
    </message>
    <message>
        <source>checked, moves well</source>
        <translation>revisado, se mueve bien</translation>
    </message>
    <message>
        <source>not checked today</source>
        <translation>hoy no se revisó</translation>
    </message>
    <message>
        <source>noted</source>
        <translation>anotado</translation>
    </message>
    <message>
        <source>This is the pain you know.</source>
        <translation>Este es el dolor que usted conoce.</translation>
    </message>
    <message>
        <source>less than a minute</source>
        <translation>menos de un minuto</translation>
    </message>
    <message>
        <source>about 1 minute</source>
        <translation>cerca de 1 minuto</translation>
    </message>
    <message>
        <source>about {count} minutes</source>
        <translation>cerca de {count} minutos</translation>
    </message>
    <message>
        <source>Get medical help at once. We did not go on with this visit.</source>
        <translation>Busque ayuda médica de inmediato. No seguimos con esta cita.</translation>
    </message>
    <message>
        <source>Let a doctor see this today.</source>
        <translation>Vaya hoy mismo al médico por esto.</translation>
    </message>
    <message>
        <source>Let a doctor see this before we treat it here.</source>
        <translation>Un médico debe ver esto antes de que lo tratemos aquí.</translation>
    </message>
    <message>
        <source>We saw: {sign}.</source>
        <translation>Vimos: {sign}.</translation>
    </message>
    <message>
        <source>We asked: &apos;{question}&apos; You said yes.</source>
        <translation>Preguntamos: «{question}» Usted dijo que sí.</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Delante</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Detrás</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>antes</translation>
    </message>
    <message>
        <source>Now: what we felt again</source>
        <translation>Ahora: lo que volvimos a tocar</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>moves less</source>
        <translation>se mueve menos</translation>
    </message>
    <message>
        <source>sore and moves less</source>
        <translation>duele y se mueve menos</translation>
    </message>
    <message>
        <source>ring: the pain you know</source>
        <translation>anillo: el dolor que usted conoce</translation>
    </message>
    <message>
        <source>page {page} of {pages}</source>
        <translation>página {page} de {pages}</translation>
    </message>
    <message>
        <source>No cautions were told. Let us know if your health or medicines change.</source>
        <translation>No se indicó nada que haya que tener en cuenta. Avísenos si cambian su salud o sus medicinas.</translation>
    </message>
    <message>
        <source>We take care because of: {cautions}</source>
        <translation>Tenemos cuidado por: {cautions}</translation>
    </message>
    <message>
        <source>Your visit</source>
        <translation>Su visita</translation>
    </message>
    <message>
        <source>In your words: {words}</source>
        <translation>En sus palabras: {words}</translation>
    </message>
    <message>
        <source>What we found</source>
        <translation>Lo que encontramos</translation>
    </message>
    <message>
        <source>This page shows where hands found something. It is not a diagnosis. It assists a trained practitioner, who follows local law, scope of practice and licensed care. If things get worse or new signs appear, seek medical help.</source>
        <translation>Esta hoja muestra dónde las manos encontraron algo. No es un diagnóstico. Ayuda a un profesional formado, que sigue la ley local, su ámbito de práctica y la atención médica autorizada. Si empeora o aparecen señales nuevas, busque ayuda médica.</translation>
    </message>
    <message>
        <source>{now}, as before.</source>
        <translation>{now}, como antes.</translation>
    </message>
</context>
<context>
    <name>home-advice</name>
    <message>
        <source>If your doctor told you otherwise, that comes first.</source>
        <extracomment>stands above all advice</extracomment>
        <translation>Si su médico le dijo otra cosa, eso va primero.</translation>
    </message>
    <message>
        <source>Nothing here should hurt more than a soft pull.</source>
        <extracomment>stands above all advice</extracomment>
        <translation>Nada de esto debe doler más que un estiramiento suave.</translation>
    </message>
    <message>
        <source>If you are not sure, ask us first.</source>
        <extracomment>stands above all advice</extracomment>
        <translation>Si tiene dudas, pregúntenos primero.</translation>
    </message>
    <message>
        <source>Walk a little, often</source>
        <extracomment>walk-a-little, title</extracomment>
        <translation>Camine un poco, a menudo</translation>
    </message>
    <message>
        <source>Keep up your day as well as you can. Walk a little, and do so often. Start on flat ground, and add a bit more as it gets easy. With low back pain, rest in bed helps no more than moving.</source>
        <extracomment>walk-a-little, text</extracomment>
        <translation>Siga con su día lo mejor que pueda. Camine un poco, y hágalo a menudo. Empiece en terreno llano y añada un poco cuando le resulte fácil. Si duele la parte baja de la espalda, guardar cama no ayuda más que moverse.</translation>
    </message>
    <message>
        <source>Stop if the pain grows, your chest hurts, or you feel faint.</source>
        <extracomment>walk-a-little, stop</extracomment>
        <translation>Pare si el dolor aumenta, le duele el pecho o siente que se desmaya.</translation>
    </message>
    <message>
        <source>Share out your day</source>
        <extracomment>pace-your-day, title</extracomment>
        <translation>Reparta las tareas del día</translation>
    </message>
    <message>
        <source>Cut big jobs into small ones. Take a short rest before it hurts, not after. On a good day, do not try to do it all.</source>
        <extracomment>pace-your-day, text</extracomment>
        <translation>Divida los trabajos grandes en otros pequeños. Descanse un poco antes de que duela, no después. En un día bueno, no intente hacerlo todo.</translation>
    </message>
    <message>
        <source>Do less for a day or two if you feel worse the next day.</source>
        <extracomment>pace-your-day, stop</extracomment>
        <translation>Haga menos durante uno o dos días si al día siguiente se siente peor.</translation>
    </message>
    <message>
        <source>Warm it, if you like warmth</source>
        <extracomment>warmth, title</extracomment>
        <translation>Calor, si le gusta</translation>
    </message>
    <message>
        <source>Lay a warm pack on the sore place for about 15 minutes. It should feel nice and warm, not hot. Put a cloth between the pack and your skin. Do not fall asleep on it.</source>
        <extracomment>warmth, text</extracomment>
        <translation>Ponga una bolsa tibia sobre la zona dolorida unos 15 minutos. Debe sentirse agradable y tibia, no muy caliente. Ponga un paño entre la bolsa y la piel. No se duerma sobre ella.</translation>
    </message>
    <message>
        <source>Take it off if it feels hot, or if the skin stings or goes numb.</source>
        <extracomment>warmth, stop</extracomment>
        <translation>Quítela si se siente muy caliente, o si la piel arde o se duerme.</translation>
    </message>
    <message>
        <source>Cold, only if you like it</source>
        <extracomment>cold-if-liked, title</extracomment>
        <translation>Frío, solo si le gusta</translation>
    </message>
    <message>
        <source>Some people like cold on a sore place. Wrap the pack in a cloth, and use it for 10 minutes at most. Do not use cold if your fingers or toes turn white in the cold.</source>
        <extracomment>cold-if-liked, text</extracomment>
        <translation>A algunas personas les gusta el frío en una zona dolorida. Envuelva la bolsa fría en un paño y úsela 10 minutos como máximo. No use frío si el frío le pone blancos los dedos de manos o pies.</translation>
    </message>
    <message>
        <source>Take it off if it burns, or if your skin turns white or numb.</source>
        <extracomment>cold-if-liked, stop</extracomment>
        <translation>Quítela si quema, o si la piel se pone blanca o se duerme.</translation>
    </message>
    <message>
        <source>Change how you sit, often</source>
        <extracomment>change-how-you-sit, title</extracomment>
        <translation>Cambie a menudo de postura en la silla</translation>
    </message>
    <message>
        <source>No way to sit is good for long. Shift, lean back, or stand up and take a few steps. Do so before it starts to hurt. A clock can help you think of it.</source>
        <extracomment>change-how-you-sit, text</extracomment>
        <translation>Ninguna postura en la silla es buena por mucho tiempo. Muévase, apóyese hacia atrás, o levántese y dé unos pasos. Hágalo antes de que empiece a doler. Un reloj puede ayudarle a recordarlo.</translation>
    </message>
    <message>
        <source>If getting up makes you dizzy, sit down again and rise more slowly.</source>
        <extracomment>change-how-you-sit, stop</extracomment>
        <translation>Si se marea al levantarse, vuelva a sentarse y levántese más despacio.</translation>
    </message>
    <message>
        <source>Sleep with a sore back</source>
        <extracomment>sleep-with-a-sore-back, title</extracomment>
        <translation>Cómo dormir con dolor de espalda</translation>
    </message>
    <message>
        <source>Lie on your side with a pillow between your knees. Or lie on your back with a pillow below your knees. To get up, roll on your side first, then push up with your arms. Late in pregnancy, go to sleep on your side.</source>
        <extracomment>sleep-with-a-sore-back, text</extracomment>
        <translation>Acuéstese de lado con una almohada entre las rodillas. O acuéstese boca arriba con una almohada debajo de las rodillas. Para levantarse, gire primero de lado y luego empuje con los brazos. Al final del embarazo, duérmase de lado.</translation>
    </message>
    <message>
        <source>Lie some other way if it hurts more or is hard to breathe.</source>
        <extracomment>sleep-with-a-sore-back, stop</extracomment>
        <translation>Busque otra postura si duele más o le cuesta respirar.</translation>
    </message>
    <message>
        <source>Sleep with a sore neck or shoulder</source>
        <extracomment>sleep-with-a-sore-neck-or-shoulder, title</extracomment>
        <translation>Cómo dormir con dolor de cuello u hombro</translation>
    </message>
    <message>
        <source>Choose a pillow that keeps your head in line with your back. Stay off the sore shoulder. Rest that arm on a second pillow in front of you. Lying face down may strain your neck.</source>
        <extracomment>sleep-with-a-sore-neck-or-shoulder, text</extracomment>
        <translation>Elija una almohada que mantenga la cabeza alineada con la espalda. No se apoye sobre el hombro dolorido. Descanse ese brazo en otra almohada delante de usted. Estar boca abajo puede forzar el cuello.</translation>
    </message>
    <message>
        <source>Try some other way to lie if your arm or hand goes numb.</source>
        <extracomment>sleep-with-a-sore-neck-or-shoulder, stop</extracomment>
        <translation>Pruebe otra postura si se le duerme el brazo o la mano.</translation>
    </message>
    <message>
        <source>Lift close to you</source>
        <extracomment>lift-close, title</extracomment>
        <translation>Levante el peso cerca del cuerpo</translation>
    </message>
    <message>
        <source>Test the load first. Hold it close and breathe as you lift. Move your feet to turn. Get help, or go twice with less.</source>
        <extracomment>lift-close, text</extracomment>
        <translation>Pruebe primero cuánto pesa. Sujételo cerca y respire mientras lo levanta. Para girar, mueva los pies. Pida ayuda, o haga dos viajes con menos peso.</translation>
    </message>
    <message>
        <source>Put it down if you feel a sharp pain or a pull in the groin.</source>
        <extracomment>lift-close, stop</extracomment>
        <translation>Deje la carga si siente un dolor agudo o un tirón en la ingle.</translation>
    </message>
    <message>
        <source>Breathe with ease</source>
        <extracomment>breathe-easily, title</extracomment>
        <translation>Respire con calma</translation>
    </message>
    <message>
        <source>Sit or lie so that you can let go. Put one hand on your belly. Let the air come in through your nose, and let it out slowly. Do this for as long as it feels good.</source>
        <extracomment>breathe-easily, text</extracomment>
        <translation>Siéntese o acuéstese de modo que pueda relajarse. Ponga una mano sobre el vientre. Deje entrar el aire por la nariz y sáquelo despacio. Hágalo mientras le resulte agradable.</translation>
    </message>
    <message>
        <source>Stop if you feel dizzy or uneasy, or if your lips tingle.</source>
        <extracomment>breathe-easily, stop</extracomment>
        <translation>Pare si siente mareo o inquietud, o si le hormiguean los labios.</translation>
    </message>
    <message>
        <source>Move your neck softly</source>
        <extracomment>move-the-neck, title</extracomment>
        <translation>Mueva el cuello con suavidad</translation>
    </message>
    <message>
        <source>Sit tall. Look slowly to one side, then to the other. Then drop your chin a little and lift it again. Go only as far as is easy, a few times.</source>
        <extracomment>move-the-neck, text</extracomment>
        <translation>Siéntese con la espalda recta. Mire despacio a un lado y luego al otro. Después baje un poco la barbilla y vuelva a subirla. Llegue solo hasta donde sea fácil, unas pocas veces.</translation>
    </message>
    <message>
        <source>Stop if you feel dizzy or sick, see badly, or feel tingling in an arm.</source>
        <extracomment>move-the-neck, stop</extracomment>
        <translation>Pare si siente mareo o náuseas, ve mal o nota hormigueo en un brazo.</translation>
    </message>
    <message>
        <source>Turn your upper back</source>
        <extracomment>move-the-upper-back, title</extracomment>
        <translation>Gire la parte alta de la espalda</translation>
    </message>
    <message>
        <source>Sit on a firm chair with your feet flat. Cross your arms on your chest. Turn your chest slowly to one side, then to the other. Breathe out as you turn.</source>
        <extracomment>move-the-upper-back, text</extracomment>
        <translation>Siéntese en una silla firme con los pies bien apoyados. Cruce los brazos sobre el pecho. Gire el pecho despacio a un lado y luego al otro. Suelte el aire al girar.</translation>
    </message>
    <message>
        <source>Stop at a sharp pain, or at pain that runs round the ribs.</source>
        <extracomment>move-the-upper-back, stop</extracomment>
        <translation>Pare si siente un dolor agudo, o un dolor que rodea las costillas.</translation>
    </message>
    <message>
        <source>Rock your low back</source>
        <extracomment>move-the-low-back, title</extracomment>
        <translation>Balancee la parte baja de la espalda</translation>
    </message>
    <message>
        <source>Lie on your back with your knees bent and your feet flat. Let both knees sway a little to one side, then to the other. Keep it small and slow. Breathe as you go.</source>
        <extracomment>move-the-low-back, text</extracomment>
        <translation>Acuéstese boca arriba con las rodillas dobladas y los pies apoyados. Balancee un poco las dos rodillas a un lado y luego al otro. Hágalo con un movimiento pequeño y lento. Respire mientras lo hace.</translation>
    </message>
    <message>
        <source>Stop if pain runs down a leg, or if a leg tingles or feels weak.</source>
        <extracomment>move-the-low-back, stop</extracomment>
        <translation>Pare si el dolor baja por una pierna. Pare también si una pierna hormiguea o se siente débil.</translation>
    </message>
    <message>
        <source>Swing your hip</source>
        <extracomment>move-the-hip, title</extracomment>
        <translation>Balancee la cadera</translation>
    </message>
    <message>
        <source>Stand tall and hold on to a table or a sink. Swing one leg softly to the front and to the back. Keep the swing small. Then do the other leg.</source>
        <extracomment>move-the-hip, text</extracomment>
        <translation>Póngase de pie, con la espalda recta, y sujétese a una mesa o un lavabo. Balancee una pierna con suavidad hacia adelante y hacia atrás. Que el movimiento sea pequeño. Luego haga lo mismo con la otra pierna.</translation>
    </message>
    <message>
        <source>Stop if your groin pinches or you do not feel safe on your feet.</source>
        <extracomment>move-the-hip, stop</extracomment>
        <translation>Pare si siente un pellizco en la ingle o inseguridad al estar de pie.</translation>
    </message>
    <message>
        <source>Bend and straighten your knee</source>
        <extracomment>move-the-knee, title</extracomment>
        <translation>Doble y estire la rodilla</translation>
    </message>
    <message>
        <source>Sit on a chair. Lift one foot till your knee is as straight as is easy. Hold it for one breath, then let it down slowly. Do this a few times with each leg.</source>
        <extracomment>move-the-knee, text</extracomment>
        <translation>Siéntese en una silla. Levante un pie hasta estirar la rodilla todo lo que sea fácil. Manténgalo durante una respiración y luego bájelo despacio. Hágalo unas pocas veces con cada pierna.</translation>
    </message>
    <message>
        <source>Stop if the knee locks, gives way, swells or gets hot.</source>
        <extracomment>move-the-knee, stop</extracomment>
        <translation>Pare si la rodilla se traba, falla, se hincha o se calienta.</translation>
    </message>
    <message>
        <source>Move your ankle and toes</source>
        <extracomment>move-the-ankle, title</extracomment>
        <translation>Mueva el tobillo y los dedos del pie</translation>
    </message>
    <message>
        <source>Sit, or lie with your leg up. Pull your toes up, then point them down. Then draw small rings with your foot. Do this now and then in the day.</source>
        <extracomment>move-the-ankle, text</extracomment>
        <translation>Siéntese, o acuéstese con la pierna en alto. Suba los dedos del pie y luego apúntelos hacia abajo. Después dibuje círculos pequeños con el pie. Hágalo de vez en cuando durante el día.</translation>
    </message>
    <message>
        <source>Stop if your calf is sore, hot or swollen, and see a doctor today.</source>
        <extracomment>move-the-ankle, stop</extracomment>
        <translation>Pare si la pantorrilla está dolorida, caliente o hinchada, y vaya hoy mismo al médico.</translation>
    </message>
    <message>
        <source>Slide your arm on a table</source>
        <extracomment>move-the-shoulder, title</extracomment>
        <translation>Deslice el brazo sobre una mesa</translation>
    </message>
    <message>
        <source>Sit at a table and lay your hand on a cloth. Slide it to the front as far as is easy. Slide it back again. Do this slowly, a few times.</source>
        <extracomment>move-the-shoulder, text</extracomment>
        <translation>Siéntese a una mesa y ponga la mano sobre un paño. Deslícela hacia adelante hasta donde sea fácil. Deslícela de vuelta. Hágalo despacio, unas pocas veces.</translation>
    </message>
    <message>
        <source>Stop at a sharp pain, or if the shoulder seems to slip out.</source>
        <extracomment>move-the-shoulder, stop</extracomment>
        <translation>Pare si siente un dolor agudo, o si el hombro parece salirse de su sitio.</translation>
    </message>
    <message>
        <source>Move your elbow, wrist and hand</source>
        <extracomment>move-the-arm-and-hand, title</extracomment>
        <translation>Mueva el codo, la muñeca y la mano</translation>
    </message>
    <message>
        <source>Bend your elbow and straighten it. Turn your palm up, then down. Make a soft fist, then spread your fingers wide. Do each of these slowly, a few times.</source>
        <extracomment>move-the-arm-and-hand, text</extracomment>
        <translation>Doble el codo y estírelo. Gire la palma hacia arriba y luego hacia abajo. Cierre el puño con suavidad y luego abra bien los dedos. Haga cada movimiento despacio, unas pocas veces.</translation>
    </message>
    <message>
        <source>Stop if your hand tingles, turns pale or blue, or hurts more.</source>
        <extracomment>move-the-arm-and-hand, stop</extracomment>
        <translation>Pare si la mano hormiguea, se pone pálida o azulada, o duele más.</translation>
    </message>
    <message>
        <source>Ease your jaw</source>
        <extracomment>ease-the-jaw, title</extracomment>
        <translation>Relaje la mandíbula</translation>
    </message>
    <message>
        <source>Let your teeth rest apart, with your lips closed. Put the tip of your tongue behind your top front teeth. Open and close your mouth slowly, in small moves. Eat soft food while it is sore.</source>
        <extracomment>ease-the-jaw, text</extracomment>
        <translation>Deje descansar los dientes separados, con los labios cerrados. Ponga la punta de la lengua detrás de los dientes delanteros de arriba. Abra y cierre la boca despacio, con movimientos pequeños. Coma alimentos blandos mientras le duela.</translation>
    </message>
    <message>
        <source>Stop if it hurts more, and see a doctor today if the jaw stays locked.</source>
        <extracomment>ease-the-jaw, stop</extracomment>
        <translation>Pare si duele más. Vaya hoy mismo al médico si la mandíbula sigue trabada.</translation>
    </message>
    <message>
        <source>Stretch your calf</source>
        <extracomment>stretch-the-calf, title</extracomment>
        <translation>Estire la pantorrilla</translation>
    </message>
    <message>
        <source>Stand with both hands on a wall. Put one foot back and keep its heel on the floor. Bend the front knee till you feel a soft pull. Hold it for a few slow breaths, then change legs.</source>
        <extracomment>stretch-the-calf, text</extracomment>
        <translation>De pie, apoye las dos manos en una pared. Lleve un pie hacia atrás y mantenga ese talón en el suelo. Doble la rodilla de adelante hasta sentir un estiramiento suave. Manténgalo unas respiraciones lentas y luego cambie de pierna.</translation>
    </message>
    <message>
        <source>Do not stretch a newly sore, hot or swollen calf: see a doctor today.</source>
        <extracomment>stretch-the-calf, stop</extracomment>
        <translation>No estire una pantorrilla con dolor, calor o hinchazón nuevos: vaya hoy mismo al médico.</translation>
    </message>
    <message>
        <source>Stretch the front of your hip</source>
        <extracomment>stretch-front-of-hip, title</extracomment>
        <translation>Estire la parte delantera de la cadera</translation>
    </message>
    <message>
        <source>Hold on to a table and take a long step to the front. Keep your back heel up and your chest tall. Bend the front knee till you feel a soft pull in the back hip. Hold it for a few slow breaths, then change legs.</source>
        <extracomment>stretch-front-of-hip, text</extracomment>
        <translation>Sujétese a una mesa y dé un paso largo hacia adelante. Mantenga el talón de atrás levantado y el pecho erguido. Doble la rodilla de adelante hasta sentir un estiramiento suave en la cadera de atrás. Manténgalo unas respiraciones lentas y luego cambie de pierna.</translation>
    </message>
    <message>
        <source>Stop if your groin pinches, your back hurts, or you do not feel safe.</source>
        <extracomment>stretch-front-of-hip, stop</extracomment>
        <translation>Pare si siente un pellizco en la ingle, dolor de espalda o inseguridad.</translation>
    </message>
    <message>
        <source>Stretch the back of your thigh</source>
        <extracomment>stretch-back-of-thigh, title</extracomment>
        <translation>Estire la parte de atrás del muslo</translation>
    </message>
    <message>
        <source>Sit near the front of a firm chair. Put one heel out in front, with the knee almost straight. Lean from your hips with a long back till you feel a soft pull. Hold it for about 30 seconds, then change legs.</source>
        <extracomment>stretch-back-of-thigh, text</extracomment>
        <translation>Siéntese cerca del borde delantero de una silla firme. Ponga un talón adelante, con la rodilla casi estirada. Inclínese desde las caderas, con la espalda larga, hasta sentir un estiramiento suave. Manténgalo unos 30 segundos y luego cambie de pierna.</translation>
    </message>
    <message>
        <source>Stop if your leg or foot tingles, or if pain shoots down the leg.</source>
        <extracomment>stretch-back-of-thigh, stop</extracomment>
        <translation>Pare si hormiguea la pierna o el pie, o si baja dolor por la pierna.</translation>
    </message>
    <message>
        <source>Stretch your chest</source>
        <extracomment>stretch-the-chest, title</extracomment>
        <translation>Estire el pecho</translation>
    </message>
    <message>
        <source>Stand in a doorway and lay one forearm on the frame. Keep your elbow a bit below your shoulder. Turn your body slowly till you feel a soft pull in the chest. Hold it for a few slow breaths, then change sides.</source>
        <extracomment>stretch-the-chest, text</extracomment>
        <translation>De pie en una puerta, apoye un antebrazo en el marco. Mantenga el codo un poco por debajo del hombro. Gire el cuerpo despacio hasta sentir un estiramiento suave en el pecho. Manténgalo unas respiraciones lentas y luego cambie de lado.</translation>
    </message>
    <message>
        <source>Stop if your arm tingles, and call for help if your chest feels heavy.</source>
        <extracomment>stretch-the-chest, stop</extracomment>
        <translation>Pare si el brazo hormiguea. Llame para pedir ayuda si siente peso en el pecho.</translation>
    </message>
    <message>
        <source>Stretch your side</source>
        <extracomment>stretch-the-side, title</extracomment>
        <translation>Estire el costado</translation>
    </message>
    <message>
        <source>Sit on a firm chair and hold the seat with one hand. Reach the other arm up and lean a little toward the first hand. Take a few slow breaths there. Come back slowly and change sides.</source>
        <extracomment>stretch-the-side, text</extracomment>
        <translation>Siéntese en una silla firme y sujete el asiento con una mano. Suba el otro brazo e inclínese un poco hacia la primera mano. Haga allí unas respiraciones lentas. Vuelva despacio y cambie de lado.</translation>
    </message>
    <message>
        <source>Stop at a sharp pain, or if it is hard to breathe.</source>
        <extracomment>stretch-the-side, stop</extracomment>
        <translation>Pare si siente un dolor agudo, o si le cuesta respirar.</translation>
    </message>
    <message>
        <source>Carry a light bag</source>
        <extracomment>carry-light, title</extracomment>
        <translation>Lleve un bolso ligero</translation>
    </message>
    <message>
        <source>Take out what you do not need. Wear a bag with two straps on both shoulders. With one strap or one hand, change sides often. Use wheels for a big load.</source>
        <extracomment>carry-light, text</extracomment>
        <translation>Saque lo que no necesita. Si tiene dos correas, lleve el bolso en los dos hombros. Con una sola correa o una mano, cambie de lado a menudo. Use ruedas para una carga grande.</translation>
    </message>
    <message>
        <source>Put the bag down if your arm or hand tingles or aches.</source>
        <extracomment>carry-light, stop</extracomment>
        <translation>Deje el bolso si el brazo o la mano hormiguean o duelen.</translation>
    </message>
    <message>
        <source>Set up your desk</source>
        <extracomment>set-up-your-desk, title</extracomment>
        <translation>Organice su escritorio</translation>
    </message>
    <message>
        <source>Let your feet rest on the floor or on a box. Have the screen in front of you, with its top near eye height. Keep keys and mouse close, so that your arms can hang loose. Then change how you sit now and then.</source>
        <extracomment>set-up-your-desk, text</extracomment>
        <translation>Apoye los pies en el suelo o en una caja. Ponga la pantalla delante, con el borde superior cerca de la altura de los ojos. Tenga cerca el teclado y el ratón (mouse), para que los brazos cuelguen sueltos. Y cambie de postura de vez en cuando.</translation>
    </message>
    <message>
        <source>If it feels worse after a few days, change it back.</source>
        <extracomment>set-up-your-desk, stop</extracomment>
        <translation>Si se siente peor después de unos días, vuelva a ponerlo como antes.</translation>
    </message>
    <message>
        <source>Hold your phone with ease</source>
        <extracomment>use-the-phone-with-ease, title</extracomment>
        <translation>Sostenga el teléfono con comodidad</translation>
    </message>
    <message>
        <source>Lift the phone, so that you need not look down for long. Use both hands, or change hands often. Do not pinch it between ear and shoulder. Look up and let your arms drop now and then.</source>
        <extracomment>use-the-phone-with-ease, text</extracomment>
        <translation>Levante el teléfono, para no mirar hacia abajo mucho tiempo. Use las dos manos, o cambie de mano a menudo. No lo sujete entre la oreja y el hombro. De vez en cuando, levante la vista y deje caer los brazos.</translation>
    </message>
    <message>
        <source>Put it down when your neck, thumb or eyes start to ache.</source>
        <extracomment>use-the-phone-with-ease, stop</extracomment>
        <translation>Déjelo cuando empiecen a dolerle el cuello, el pulgar o los ojos.</translation>
    </message>
    <message>
        <source>Back to sport, step by step</source>
        <extracomment>back-to-sport, title</extracomment>
        <translation>Vuelva al deporte, paso a paso</translation>
    </message>
    <message>
        <source>Go easy for a few days. Then start with less than you did before. If you feel fine the next day, add a little. If not, go back one step.</source>
        <extracomment>back-to-sport, text</extracomment>
        <translation>Tómelo con calma unos días. Luego empiece con menos que antes. Si al día siguiente se siente bien, añada un poco. Si no, retroceda un paso.</translation>
    </message>
    <message>
        <source>Stop at a sharp pain, chest pain, or if you feel faint.</source>
        <extracomment>back-to-sport, stop</extracomment>
        <translation>Pare si siente un dolor agudo, dolor en el pecho o que se desmaya.</translation>
    </message>
    <message>
        <source>Keep a short pain diary</source>
        <extracomment>keep-a-pain-diary, title</extracomment>
        <translation>Lleve un breve diario del dolor</translation>
    </message>
    <message>
        <source>Once a day, write down how much it hurts, from 0 to 10. 0 is no pain, and 10 is the worst you can think of. Add what you did and what helped. Bring it with you next time.</source>
        <extracomment>keep-a-pain-diary, text</extracomment>
        <translation>Una vez al día, anote cuánto le duele, del 0 al 10. 0 es ningún dolor, y 10 es el peor que pueda imaginar. Añada qué hizo y qué le ayudó. Tráigalo la próxima vez.</translation>
    </message>
    <message>
        <source>Stop if it makes you think of the pain more.</source>
        <extracomment>keep-a-pain-diary, stop</extracomment>
        <translation>Déjelo si le hace pensar más en el dolor.</translation>
    </message>
    <message>
        <source>Care for your feet</source>
        <extracomment>care-for-your-feet, title</extracomment>
        <translation>Cuide sus pies</translation>
    </message>
    <message>
        <source>Look at both feet each day, also from below and between the toes. Wash them and dry them well. Wear shoes with room for your toes. Feel in the shoe for stones before you put it on.</source>
        <extracomment>care-for-your-feet, text</extracomment>
        <translation>Mire los dos pies cada día, también por debajo y entre los dedos. Lávelos y séquelos bien. Use zapatos con espacio para los dedos. Antes de ponerse el zapato, busque con la mano si hay piedras dentro.</translation>
    </message>
    <message>
        <source>See a doctor today for a sore, a black spot, or a hot, swollen foot.</source>
        <extracomment>care-for-your-feet, stop</extracomment>
        <translation>Vaya hoy mismo al médico si tiene una llaga, mancha negra o pie caliente e hinchado.</translation>
    </message>
    <message>
        <source>Press with a soft ball</source>
        <extracomment>press-with-a-ball, title</extracomment>
        <translation>Presione con una pelota blanda</translation>
    </message>
    <message>
        <source>Put a soft ball between a sore muscle and a wall, or below your foot. Lean in till it is firm but fine, for a few slow breaths. Keep off bone, belly, throat, groin, armpit and the back of the knee. Skip spots that we worked on today.</source>
        <extracomment>press-with-a-ball, text</extracomment>
        <translation>Ponga una pelota blanda entre un músculo dolorido y una pared, o debajo del pie. Apóyese hasta sentir una presión firme pero cómoda, durante unas respiraciones lentas. Evite huesos, vientre, garganta, ingle, axila y la parte de atrás de la rodilla. No presione los puntos que tratamos hoy.</translation>
    </message>
    <message>
        <source>Stop if you feel a beat, a tingle, or a pain that does not ease.</source>
        <extracomment>press-with-a-ball, stop</extracomment>
        <translation>Pare si nota un latido, un hormigueo o un dolor que no se alivia.</translation>
    </message>
    <message>
        <source>Your skin may be pink and warm for some hours. You may be a bit sore or tired for a day or two.</source>
        <extracomment>after gliding</extracomment>
        <translation>La piel puede estar rosada y tibia unas horas. Puede sentir algo de dolor o cansancio uno o dos días.</translation>
    </message>
    <message>
        <source>Your skin may be red and sore to touch for a day or two. You may get a small bruise. It fades in a week or two.</source>
        <extracomment>after skin-rolling</extracomment>
        <translation>La piel puede estar roja y doler al tocarla uno o dos días. Puede salirle un moretón pequeño. Se va en una o dos semanas.</translation>
    </message>
    <message>
        <source>The spot may ache for a day or two, as after hard work. You may get a bruise. It fades in a week or two. Do not press the spot again for two days.</source>
        <extracomment>after sustained-pressure</extracomment>
        <translation>El punto puede doler uno o dos días, como después de un trabajo duro. Puede salirle un moretón. Se va en una o dos semanas. No vuelva a presionar el punto durante dos días.</translation>
    </message>
    <message>
        <source>The place may be red for some hours and sore for a day or two. Go easy on it for that time.</source>
        <extracomment>after cross-fibre</extracomment>
        <translation>La zona puede estar roja unas horas y dolorida uno o dos días. Durante ese tiempo, no la fuerce.</translation>
    </message>
    <message>
        <source>The muscle may ache for a day or two, as after hard work. Move it softly, and do not stretch it hard.</source>
        <extracomment>after hold-and-lengthen</extracomment>
        <translation>El músculo puede doler uno o dos días, como después de un trabajo duro. Muévalo con suavidad y no lo estire con fuerza.</translation>
    </message>
    <message>
        <source>Your skin will be red for some hours. You may get small red dots or a bruise. These mostly fade in a week, but some take two. Call us if the skin breaks or blisters.</source>
        <extracomment>after instrument</extracomment>
        <translation>La piel estará roja unas horas. Pueden salirle puntitos rojos o un moretón. La mayoría se va en una semana, pero algunos tardan dos. Llámenos si la piel se abre o salen ampollas.</translation>
    </message>
    <message>
        <source>You must expect round marks that look like bruises. Most fade in 3 to 7 days, but some take 2 to 3 weeks. The skin may be sore. Call us if it blisters.</source>
        <extracomment>after suction</extracomment>
        <translation>Debe contar con marcas redondas que parecen moretones. La mayoría se va en 3 a 7 días. Algunas tardan de 2 a 3 semanas. La piel puede estar dolorida. Llámenos si salen ampollas.</translation>
    </message>
    <message>
        <source>Your skin will be red for some hours. You may get marks that look like bruises. Most fade in 3 to 7 days, but some take 2 to 3 weeks. Call us if the skin blisters.</source>
        <extracomment>after gliding-suction</extracomment>
        <translation>La piel estará roja unas horas. Pueden salirle marcas que parecen moretones. La mayoría se va en 3 a 7 días. Algunas tardan de 2 a 3 semanas. Llámenos si salen ampollas en la piel.</translation>
    </message>
    <message>
        <source>You may be sore, stiff or tired, or have a mild headache. Most of this starts within a day and is gone within 3 days. To be faint, numb or weak is not part of it. See when to call.</source>
        <extracomment>after mobilising</extracomment>
        <translation>Puede sentir dolor, rigidez o cansancio, o un dolor de cabeza leve. La mayor parte empieza el primer día y se va en 3 días. Sentir desmayo, adormecimiento o debilidad no es parte de esto. Mire cuándo llamar.</translation>
    </message>
    <message>
        <source>You may move with more ease for a while. The muscle may be sore for a day or two.</source>
        <extracomment>after stretching</extracomment>
        <translation>Puede moverse con más facilidad por un tiempo. El músculo puede estar dolorido uno o dos días.</translation>
    </message>
    <message>
        <source>You may feel no more than a mild ache for a day or two. Some people are a bit tired that day.</source>
        <extracomment>after held-ease</extracomment>
        <translation>Quizá solo sienta una molestia leve uno o dos días. Algunas personas sienten algo de cansancio ese día.</translation>
    </message>
    <message>
        <source>The muscle may ache for a day or two. You may get a bruise. It fades in a week or two. If it swells or aches badly, or your water turns brown, see a doctor today.</source>
        <extracomment>after powered-device</extracomment>
        <translation>El músculo puede doler uno o dos días. Puede salirle un moretón. Se va en una o dos semanas. Vaya hoy mismo al médico si se hincha o duele mucho. Vaya también hoy mismo si la orina se pone marrón (color café).</translation>
    </message>
    <message>
        <source>The tape may stay on as long as we told you. Pat it dry after you wash. Take it off at once if the skin itches, burns or blisters. Peel it slowly, with one hand on the skin.</source>
        <extracomment>after taping</extracomment>
        <translation>La cinta puede quedarse puesta el tiempo que le dijimos. Séquela con toques suaves después de lavarse. Quítela de inmediato si la piel pica, arde o forma ampollas. Despéguela despacio, con una mano sobre la piel.</translation>
    </message>
    <message>
        <source>You are newly numb between the legs, or cannot pass or hold water or stool.</source>
        <extracomment>when to call: new-numbness-between-legs</extracomment>
        <translation>Se le duerme la zona entre las piernas, y eso es nuevo. O no puede orinar o defecar, o no puede aguantar la orina o las heces.</translation>
    </message>
    <message>
        <source>Both legs get weak or numb, or pain starts to shoot down both.</source>
        <extracomment>when to call: both-legs</extracomment>
        <translation>Las dos piernas se debilitan o se duermen, o empieza a bajar dolor por ambas.</translation>
    </message>
    <message>
        <source>Your face droops, or an arm or leg goes weak or numb all at once. You newly cannot speak, see, swallow or walk well.</source>
        <extracomment>when to call: face-arm-speech-sight</extracomment>
        <translation>Se le cae un lado de la cara. O un brazo o una pierna se debilita o se duerme de repente. No puede hablar, ver, tragar o caminar bien, y eso es nuevo.</translation>
    </message>
    <message>
        <source>A very bad headache hits you all at once. Or it comes with a fever and a stiff neck.</source>
        <extracomment>when to call: sudden-bad-headache</extracomment>
        <translation>Le da de repente un dolor de cabeza muy fuerte. O ese dolor viene con fiebre y cuello rígido.</translation>
    </message>
    <message>
        <source>You have pain or weight in your chest, or you cannot get your breath. A tearing pain starts in your chest, back or belly.</source>
        <extracomment>when to call: chest-or-breath</extracomment>
        <translation>Tiene dolor o peso en el pecho, o le falta el aire. Le empieza un dolor desgarrador en el pecho, la espalda o el vientre.</translation>
    </message>
    <message>
        <source>An arm or leg turns cold, pale or blue. Or it is swollen hard and hurts very badly.</source>
        <extracomment>when to call: cold-or-hard-limb</extracomment>
        <translation>Un brazo o una pierna se pone frío, pálido o azulado. O está hinchado y duro, y duele muchísimo.</translation>
    </message>
    <message>
        <source>One arm or leg is newly swollen, hot or sore. If you cannot get your breath too, call the emergency number.</source>
        <extracomment>when to call: swollen-limb</extracomment>
        <translation>Un brazo o una pierna tiene hinchazón, calor o dolor nuevos. Si además le falta el aire, llame al número de emergencias local.</translation>
    </message>
    <message>
        <source>An arm, hand, leg or foot gets weaker or more numb day by day.</source>
        <extracomment>when to call: weaker-limb</extracomment>
        <translation>Un brazo, mano, pierna o pie pierde fuerza o sensibilidad día a día.</translation>
    </message>
    <message>
        <source>You have a fever or chills, or a joint is hot, red and swollen. If you have both, call the emergency number.</source>
        <extracomment>when to call: fever-or-hot-joint</extracomment>
        <translation>Tiene fiebre o escalofríos, o una articulación caliente, roja e hinchada. Si tiene ambas cosas, llame al número de emergencias local.</translation>
    </message>
    <message>
        <source>You have neck pain or a headache like none before, or new dizzy spells.</source>
        <extracomment>when to call: new-neck-or-head-pain</extracomment>
        <translation>Tiene un dolor de cuello o de cabeza como ninguno antes, o mareos nuevos.</translation>
    </message>
    <message>
        <source>A bruise grows, or you take a blood thinner and have new deep pain.</source>
        <extracomment>when to call: bruise-grows</extracomment>
        <translation>Un moretón crece, o usted toma un anticoagulante y tiene un dolor profundo nuevo.</translation>
    </message>
    <message>
        <source>You feel worse, or are sore for longer than we told you. Call us too if you are not sure.</source>
        <extracomment>when to call: worse-or-too-long</extracomment>
        <translation>Se siente peor, o el dolor dura más de lo que le dijimos. Llámenos también si tiene dudas.</translation>
    </message>
</context>
<context>
    <name>movements</name>
    <message>
        <source>opening your mouth</source>
        <extracomment>jaw-opening</extracomment>
        <translation>abrir la boca</translation>
    </message>
    <message>
        <source>moving your jaw to the front</source>
        <extracomment>jaw-protrusion</extracomment>
        <translation>adelantar la mandíbula</translation>
    </message>
    <message>
        <source>moving your jaw to the side</source>
        <extracomment>jaw-side-glide</extracomment>
        <translation>mover la mandíbula hacia un lado</translation>
    </message>
    <message>
        <source>bending your head to the front</source>
        <extracomment>neck-flexion</extracomment>
        <translation>inclinar la cabeza hacia adelante</translation>
    </message>
    <message>
        <source>bending your head to the back</source>
        <extracomment>neck-extension</extracomment>
        <translation>inclinar la cabeza hacia atrás</translation>
    </message>
    <message>
        <source>bending your head to the side</source>
        <extracomment>neck-side-bending</extracomment>
        <translation>inclinar la cabeza hacia un lado</translation>
    </message>
    <message>
        <source>turning your head</source>
        <extracomment>neck-rotation</extracomment>
        <translation>girar la cabeza</translation>
    </message>
    <message>
        <source>turning your head, chin down</source>
        <extracomment>neck-rotation-flexed</extracomment>
        <translation>girar la cabeza con la barbilla baja</translation>
    </message>
    <message>
        <source>lifting your arm to the front</source>
        <extracomment>shoulder-flexion</extracomment>
        <translation>levantar el brazo hacia adelante</translation>
    </message>
    <message>
        <source>moving your arm to the back</source>
        <extracomment>shoulder-extension</extracomment>
        <translation>llevar el brazo hacia atrás</translation>
    </message>
    <message>
        <source>lifting your arm to the side</source>
        <extracomment>shoulder-abduction</extracomment>
        <translation>levantar el brazo hacia el costado</translation>
    </message>
    <message>
        <source>lifting your arm to the side, shoulder blade held</source>
        <extracomment>shoulder-abduction-blade-held</extracomment>
        <translation>levantar el brazo hacia el costado, con el omóplato sujeto</translation>
    </message>
    <message>
        <source>turning your arm out, elbow at your side</source>
        <extracomment>shoulder-external-rotation-at-side</extracomment>
        <translation>girar el brazo hacia afuera, con el codo pegado al cuerpo</translation>
    </message>
    <message>
        <source>moving your arm across your chest</source>
        <extracomment>shoulder-horizontal-adduction</extracomment>
        <translation>cruzar el brazo por delante del pecho</translation>
    </message>
    <message>
        <source>reaching up your back</source>
        <extracomment>hand-behind-back</extracomment>
        <translation>subir la mano por la espalda</translation>
    </message>
    <message>
        <source>turning your arm out</source>
        <extracomment>shoulder-external-rotation</extracomment>
        <translation>girar el brazo hacia afuera</translation>
    </message>
    <message>
        <source>turning your arm in</source>
        <extracomment>shoulder-internal-rotation</extracomment>
        <translation>girar el brazo hacia adentro</translation>
    </message>
    <message>
        <source>bending your elbow</source>
        <extracomment>elbow-flexion</extracomment>
        <translation>doblar el codo</translation>
    </message>
    <message>
        <source>making your elbow straight</source>
        <extracomment>elbow-extension</extracomment>
        <translation>estirar el codo</translation>
    </message>
    <message>
        <source>turning your palm down</source>
        <extracomment>forearm-pronation</extracomment>
        <translation>girar la palma hacia abajo</translation>
    </message>
    <message>
        <source>turning your palm up</source>
        <extracomment>forearm-supination</extracomment>
        <translation>girar la palma hacia arriba</translation>
    </message>
    <message>
        <source>bending your wrist</source>
        <extracomment>wrist-flexion</extracomment>
        <translation>doblar la muñeca</translation>
    </message>
    <message>
        <source>lifting your hand at the wrist</source>
        <extracomment>wrist-extension</extracomment>
        <translation>levantar la mano desde la muñeca</translation>
    </message>
    <message>
        <source>moving your hand to the thumb side</source>
        <extracomment>wrist-radial-deviation</extracomment>
        <translation>mover la mano hacia el lado del pulgar</translation>
    </message>
    <message>
        <source>moving your hand to the small finger side</source>
        <extracomment>wrist-ulnar-deviation</extracomment>
        <translation>mover la mano hacia el lado del meñique</translation>
    </message>
    <message>
        <source>bending your finger at the knuckle</source>
        <extracomment>finger-flexion</extracomment>
        <translation>doblar el dedo por el nudillo</translation>
    </message>
    <message>
        <source>making your finger straight at the knuckle</source>
        <extracomment>finger-extension</extracomment>
        <translation>estirar el dedo por el nudillo</translation>
    </message>
    <message>
        <source>bending your finger in the middle</source>
        <extracomment>finger-middle-joint-flexion</extracomment>
        <translation>doblar el dedo por el medio</translation>
    </message>
    <message>
        <source>making your finger straight in the middle</source>
        <extracomment>finger-middle-joint-extension</extracomment>
        <translation>estirar el dedo por el medio</translation>
    </message>
    <message>
        <source>gap between your fingertip and your palm</source>
        <extracomment>finger-curl-distance</extracomment>
        <translation>distancia entre la punta del dedo y la palma</translation>
    </message>
    <message>
        <source>moving your thumb out</source>
        <extracomment>thumb-abduction</extracomment>
        <translation>llevar el pulgar hacia afuera</translation>
    </message>
    <message>
        <source>bending your thumb</source>
        <extracomment>thumb-flexion</extracomment>
        <translation>doblar el pulgar</translation>
    </message>
    <message>
        <source>making your thumb straight</source>
        <extracomment>thumb-extension</extracomment>
        <translation>estirar el pulgar</translation>
    </message>
    <message>
        <source>gap between your thumb and your small finger</source>
        <extracomment>thumb-opposition</extracomment>
        <translation>distancia entre el pulgar y el meñique</translation>
    </message>
    <message>
        <source>how wide your low ribs move</source>
        <extracomment>chest-expansion</extracomment>
        <translation>cuánto se abren las costillas bajas</translation>
    </message>
    <message>
        <source>how wide your high ribs move</source>
        <extracomment>chest-expansion-upper</extracomment>
        <translation>cuánto se abren las costillas altas</translation>
    </message>
    <message>
        <source>turning your upper body</source>
        <extracomment>trunk-rotation</extracomment>
        <translation>girar la parte de arriba del cuerpo</translation>
    </message>
    <message>
        <source>bending to the front</source>
        <extracomment>trunk-flexion</extracomment>
        <translation>inclinarse hacia adelante</translation>
    </message>
    <message>
        <source>bending to the back</source>
        <extracomment>trunk-extension</extracomment>
        <translation>inclinarse hacia atrás</translation>
    </message>
    <message>
        <source>bending to the side</source>
        <extracomment>trunk-side-bending</extracomment>
        <translation>inclinarse hacia un lado</translation>
    </message>
    <message>
        <source>sliding your hand down your thigh</source>
        <extracomment>trunk-side-bending-tape</extracomment>
        <translation>deslizar la mano hacia abajo por el muslo</translation>
    </message>
    <message>
        <source>gap between your fingertips and the floor</source>
        <extracomment>fingertip-to-floor</extracomment>
        <translation>distancia entre las puntas de los dedos y el suelo</translation>
    </message>
    <message>
        <source>bending your low back</source>
        <extracomment>lumbar-flexion-tape</extracomment>
        <translation>doblar la parte baja de la espalda</translation>
    </message>
    <message>
        <source>turning your thigh in, sitting</source>
        <extracomment>hip-internal-rotation-sitting</extracomment>
        <translation>girar el muslo hacia adentro, en posición sentada</translation>
    </message>
    <message>
        <source>turning your thigh out, sitting</source>
        <extracomment>hip-external-rotation-sitting</extracomment>
        <translation>girar el muslo hacia afuera, en posición sentada</translation>
    </message>
    <message>
        <source>lifting your straight leg</source>
        <extracomment>straight-leg-raise</extracomment>
        <translation>levantar la pierna estirada</translation>
    </message>
    <message>
        <source>bending your hip</source>
        <extracomment>hip-flexion</extracomment>
        <translation>doblar la cadera</translation>
    </message>
    <message>
        <source>moving your leg out</source>
        <extracomment>hip-abduction</extracomment>
        <translation>llevar la pierna hacia afuera</translation>
    </message>
    <message>
        <source>moving your leg in</source>
        <extracomment>hip-adduction</extracomment>
        <translation>llevar la pierna hacia adentro</translation>
    </message>
    <message>
        <source>turning your thigh in, hip bent</source>
        <extracomment>hip-internal-rotation-bent</extracomment>
        <translation>girar el muslo hacia adentro, con la cadera doblada</translation>
    </message>
    <message>
        <source>turning your thigh out, hip bent</source>
        <extracomment>hip-external-rotation-bent</extracomment>
        <translation>girar el muslo hacia afuera, con la cadera doblada</translation>
    </message>
    <message>
        <source>turning your leg in, on your back</source>
        <extracomment>hip-internal-rotation-on-back</extracomment>
        <translation>girar la pierna hacia adentro, boca arriba</translation>
    </message>
    <message>
        <source>turning your leg out, on your back</source>
        <extracomment>hip-external-rotation-on-back</extracomment>
        <translation>girar la pierna hacia afuera, boca arriba</translation>
    </message>
    <message>
        <source>turning your leg in</source>
        <extracomment>hip-internal-rotation</extracomment>
        <translation>girar la pierna hacia adentro</translation>
    </message>
    <message>
        <source>turning your leg out</source>
        <extracomment>hip-external-rotation</extracomment>
        <translation>girar la pierna hacia afuera</translation>
    </message>
    <message>
        <source>moving your leg to the back</source>
        <extracomment>hip-extension</extracomment>
        <translation>llevar la pierna hacia atrás</translation>
    </message>
    <message>
        <source>bending your knee</source>
        <extracomment>knee-flexion</extracomment>
        <translation>doblar la rodilla</translation>
    </message>
    <message>
        <source>making your knee straight</source>
        <extracomment>knee-extension</extracomment>
        <translation>estirar la rodilla</translation>
    </message>
    <message>
        <source>making your knee straight, hip bent</source>
        <extracomment>knee-extension-hip-bent</extracomment>
        <translation>estirar la rodilla, con la cadera doblada</translation>
    </message>
    <message>
        <source>bending your knee, face down</source>
        <extracomment>knee-flexion-face-down</extracomment>
        <translation>doblar la rodilla, boca abajo</translation>
    </message>
    <message>
        <source>moving your knee over your foot</source>
        <extracomment>weight-bearing-lunge</extracomment>
        <translation>llevar la rodilla por encima del pie</translation>
    </message>
    <message>
        <source>how far your toe is from the wall</source>
        <extracomment>weight-bearing-lunge-distance</extracomment>
        <translation>distancia entre el dedo gordo del pie y la pared</translation>
    </message>
    <message>
        <source>lifting the front of your foot</source>
        <extracomment>ankle-dorsiflexion</extracomment>
        <translation>levantar la punta del pie</translation>
    </message>
    <message>
        <source>pointing your foot down</source>
        <extracomment>ankle-plantarflexion</extracomment>
        <translation>apuntar el pie hacia abajo</translation>
    </message>
    <message>
        <source>turning your sole in</source>
        <extracomment>ankle-inversion</extracomment>
        <translation>girar la planta del pie hacia adentro</translation>
    </message>
    <message>
        <source>turning your sole out</source>
        <extracomment>ankle-eversion</extracomment>
        <translation>girar la planta del pie hacia afuera</translation>
    </message>
    <message>
        <source>lifting your big toe</source>
        <extracomment>big-toe-extension</extracomment>
        <translation>levantar el dedo gordo del pie</translation>
    </message>
    <message>
        <source>bending your big toe down</source>
        <extracomment>big-toe-flexion</extracomment>
        <translation>doblar el dedo gordo del pie hacia abajo</translation>
    </message>
</context>
<context>
    <name>patient-texts</name>
    <message>
        <source>Before we start: tell us how you are.</source>
        <extracomment>welcome-title</extracomment>
        <translation>Antes de empezar: díganos cómo está.</translation>
    </message>
    <message>
        <source>Your answers help us to keep you safe.</source>
        <extracomment>welcome-why</extracomment>
        <translation>Sus respuestas nos ayudan a cuidar su seguridad.</translation>
    </message>
    <message>
        <source>You can skip what you do not want to say.</source>
        <extracomment>welcome-skip</extracomment>
        <translation>Puede omitir lo que no quiera decir.</translation>
    </message>
    <message>
        <source>Ask us if you need help, big print, or some other language.</source>
        <extracomment>welcome-help</extracomment>
        <translation>Avísenos si necesita ayuda, letra grande u otro idioma.</translation>
    </message>
    <message>
        <source>What you tell us goes in your record. We keep it locked.</source>
        <extracomment>welcome-private</extracomment>
        <translation>Lo que nos dice va a su historia clínica. La guardamos bajo llave.</translation>
    </message>
    <message>
        <source>These pages do not tell you what is wrong. They help us to ask well.</source>
        <extracomment>welcome-limits</extracomment>
        <translation>Estas páginas no le dicen qué problema tiene. Nos ayudan a preguntar bien.</translation>
    </message>
    <message>
        <source>Use a dark pen. Bring these pages with you.</source>
        <extracomment>welcome-form-how</extracomment>
        <translation>Use un bolígrafo de tinta oscura. Traiga estas páginas con usted.</translation>
    </message>
    <message>
        <source>What is your name?</source>
        <extracomment>welcome-form-name</extracomment>
        <translation>¿Cómo se llama?</translation>
    </message>
    <message>
        <source>When were you born?</source>
        <extracomment>welcome-form-born</extracomment>
        <translation>¿En qué fecha nació?</translation>
    </message>
    <message>
        <source>What is the date today?</source>
        <extracomment>welcome-form-date</extracomment>
        <translation>¿Qué fecha es hoy?</translation>
    </message>
    <message>
        <source>Who helped you to fill this in?</source>
        <extracomment>welcome-form-helper</extracomment>
        <translation>¿Quién le ayudó a completar estas páginas?</translation>
    </message>
    <message>
        <source>How can we reach you?</source>
        <extracomment>welcome-form-reach</extracomment>
        <translation>¿Cómo podemos comunicarnos con usted?</translation>
    </message>
    <message>
        <source>Whom should we call if you fall ill here?</source>
        <extracomment>welcome-form-tell</extracomment>
        <translation>¿A quién llamamos si usted se pone mal aquí?</translation>
    </message>
    <message>
        <source>Do not wait for your visit if you have one of these now.</source>
        <extracomment>urgent-title</extracomment>
        <translation>No espere a su cita si ahora tiene alguno de estos problemas.</translation>
    </message>
    <message>
        <source>You have pain in the chest, arm or jaw, or you cannot get your breath.</source>
        <extracomment>urgent-chest</extracomment>
        <translation>Tiene dolor en el pecho, el brazo o la mandíbula, o le falta el aire.</translation>
    </message>
    <message>
        <source>Your face droops, or an arm or leg is weak or numb all at once.</source>
        <extracomment>urgent-face</extracomment>
        <translation>Se le cae un lado de la cara. O un brazo o una pierna se debilita o se duerme de repente.</translation>
    </message>
    <message>
        <source>You cannot speak, see or swallow well, and that is new.</source>
        <extracomment>urgent-speech</extracomment>
        <translation>No puede hablar, ver o tragar bien, y eso es nuevo.</translation>
    </message>
    <message>
        <source>You have the worst headache of your life.</source>
        <extracomment>urgent-head</extracomment>
        <translation>Tiene el peor dolor de cabeza de su vida.</translation>
    </message>
    <message>
        <source>You have a new headache with a stiff neck and a fever.</source>
        <extracomment>urgent-head-fever</extracomment>
        <translation>Tiene un dolor de cabeza nuevo, con cuello rígido y fiebre.</translation>
    </message>
    <message>
        <source>A joint is hot or red, and you have a fever.</source>
        <extracomment>urgent-joint</extracomment>
        <translation>Una articulación está caliente o roja, y además usted tiene fiebre.</translation>
    </message>
    <message>
        <source>You have bad pain in the belly or back, and feel a strong beat there.</source>
        <extracomment>urgent-throb</extracomment>
        <translation>Tiene un dolor fuerte en vientre o espalda, y siente allí un latido fuerte.</translation>
    </message>
    <message>
        <source>You are numb between the legs.</source>
        <extracomment>urgent-saddle</extracomment>
        <translation>No siente bien la zona entre las piernas: está dormida.</translation>
    </message>
    <message>
        <source>You cannot pass or hold water or stool as before.</source>
        <extracomment>urgent-bladder</extracomment>
        <translation>Ya no puede orinar o defecar como antes, o ya no puede aguantarse como antes.</translation>
    </message>
    <message>
        <source>Both legs get weak or numb.</source>
        <extracomment>urgent-legs</extracomment>
        <translation>Las dos piernas se debilitan o se duermen.</translation>
    </message>
    <message>
        <source>You had a bad fall or crash. Since then you cannot stand, or cannot move your neck.</source>
        <extracomment>urgent-fall</extracomment>
        <translation>Tuvo una caída o un choque fuerte. Desde entonces no puede estar de pie o no puede mover el cuello.</translation>
    </message>
    <message>
        <source>You are pregnant, and have a bad headache or bleeding.</source>
        <extracomment>urgent-pregnant</extracomment>
        <translation>Está embarazada y tiene un dolor de cabeza fuerte o sangrado.</translation>
    </message>
    <message>
        <source>Call your emergency number now. Do not fill in the rest.</source>
        <extracomment>urgent-what-form</extracomment>
        <translation>Llame ahora mismo al número de emergencias local. No complete el resto.</translation>
    </message>
    <message>
        <source>See a doctor today if you have one of these.</source>
        <extracomment>today-title</extracomment>
        <translation>Vaya hoy mismo al médico si tiene alguno de estos problemas.</translation>
    </message>
    <message>
        <source>One leg is swollen, hot or sore, and that is new. If you cannot get your breath, call your emergency number.</source>
        <extracomment>today-calf</extracomment>
        <translation>Una pierna está hinchada, caliente o dolorida, y eso es nuevo. Si le falta el aire, llame al número de emergencias local.</translation>
    </message>
    <message>
        <source>A joint is hot, red or swollen, and that is new.</source>
        <extracomment>today-joint</extracomment>
        <translation>Una articulación está caliente, roja o hinchada, y eso es nuevo.</translation>
    </message>
    <message>
        <source>You are over 50, with a new headache and trouble with your jaw or sight.</source>
        <extracomment>today-head</extracomment>
        <translation>Tiene más de 50 años, dolor de cabeza nuevo y problemas de mandíbula o vista.</translation>
    </message>
    <message>
        <source>You are pregnant, and your face, hands or legs swell all at once.</source>
        <extracomment>today-pregnant</extracomment>
        <translation>Está embarazada y de repente se le hinchan la cara, las manos o las piernas.</translation>
    </message>
    <message>
        <source>An arm, hand, leg or foot gets weaker day by day.</source>
        <extracomment>today-weak</extracomment>
        <translation>Un brazo, una mano, una pierna o un pie pierde fuerza día a día.</translation>
    </message>
    <message>
        <source>Tell us that you have it. We do not work on it before a doctor has seen it.</source>
        <extracomment>today-what</extracomment>
        <translation>Díganos que lo tiene. No lo tratamos antes de que lo haya visto un médico.</translation>
    </message>
    <message>
        <source>I have none of these.</source>
        <extracomment>urgent-none</extracomment>
        <translation>No tengo ninguno de estos problemas.</translation>
    </message>
    <message>
        <source>Do you have one of these now?</source>
        <extracomment>urgent-here-title</extracomment>
        <translation>¿Tiene ahora alguno de estos problemas?</translation>
    </message>
    <message>
        <source>I have one of these.</source>
        <extracomment>urgent-here-yes</extracomment>
        <translation>Tengo alguno de estos problemas.</translation>
    </message>
    <message>
        <source>Please tell your therapist now, before you go on.</source>
        <extracomment>urgent-here-what</extracomment>
        <translation>Por favor, dígaselo ahora a su terapeuta, antes de seguir.</translation>
    </message>
    <message>
        <source>What brings you here today?</source>
        <extracomment>story-title</extracomment>
        <translation>¿Qué le trae hoy aquí?</translation>
    </message>
    <message>
        <source>Where does it hurt?</source>
        <extracomment>mark-title</extracomment>
        <translation>¿Dónde le duele?</translation>
    </message>
    <message>
        <source>First touch the place on yourself. Then find the same place on the picture.</source>
        <extracomment>mark-touch</extracomment>
        <translation>Primero toque el lugar en su propio cuerpo. Luego busque el mismo lugar en el dibujo.</translation>
    </message>
    <message>
        <source>Look for the letters L and R on the picture. L is your LEFT. R is your RIGHT.</source>
        <extracomment>mark-letters</extracomment>
        <translation>Busque en el dibujo las letras L y R. La L es su lado IZQUIERDO. La R es su lado DERECHO.</translation>
    </message>
    <message>
        <source>Front of your body</source>
        <extracomment>mark-front-title</extracomment>
        <translation>Parte delantera de su cuerpo</translation>
    </message>
    <message>
        <source>Put your hand on the place on the front of your body. Is it on your LEFT or on your RIGHT?</source>
        <extracomment>mark-front-touch</extracomment>
        <translation>Ponga la mano en el lugar, en la parte delantera del cuerpo. ¿Está a su IZQUIERDA o a su DERECHA?</translation>
    </message>
    <message>
        <source>The picture looks at you, like a person who faces you. So its LEFT is next to your RIGHT hand. Go by the letters.</source>
        <extracomment>mark-front-faces</extracomment>
        <translation>El dibujo le mira, como una persona que está frente a usted. Por eso la IZQUIERDA del dibujo queda junto a la mano DERECHA de usted. Guíese por las letras.</translation>
    </message>
    <message>
        <source>Back of your body</source>
        <extracomment>mark-back-title</extracomment>
        <translation>Parte de atrás de su cuerpo</translation>
    </message>
    <message>
        <source>Reach behind you and touch the place. If you cannot reach it, ask someone to touch it for you.</source>
        <extracomment>mark-back-touch</extracomment>
        <translation>Lleve la mano hacia atrás y toque el lugar. Si no llega, pida a alguien que lo toque por usted.</translation>
    </message>
    <message>
        <source>Here you see the body from behind. Its LEFT is on the same side as yours.</source>
        <extracomment>mark-back-faces</extracomment>
        <translation>Aquí ve el cuerpo desde atrás. La IZQUIERDA del dibujo está del mismo lado que la suya.</translation>
    </message>
    <message>
        <source>Look at the front and the back. Mark both if it hurts on both.</source>
        <extracomment>mark-both-views</extracomment>
        <translation>Mire el dibujo de delante y el de atrás. Marque los dos si le duele en los dos.</translation>
    </message>
    <message>
        <source>It hurts on the side of my body.</source>
        <extracomment>mark-sides-open</extracomment>
        <translation>Me duele en el costado del cuerpo.</translation>
    </message>
    <message>
        <source>Sides of your body</source>
        <extracomment>mark-sides-title</extracomment>
        <translation>Costados de su cuerpo</translation>
    </message>
    <message>
        <source>Put your hand on the place on the side of your body. Is it your LEFT side or your RIGHT side?</source>
        <extracomment>mark-sides-touch</extracomment>
        <translation>Ponga la mano en el lugar, en el costado del cuerpo. ¿Es su lado IZQUIERDO o su lado DERECHO?</translation>
    </message>
    <message>
        <source>One picture shows your RIGHT side. The other shows your LEFT side. Go by the words.</source>
        <extracomment>mark-sides-faces</extracomment>
        <translation>Un dibujo muestra su lado DERECHO. El otro muestra su lado IZQUIERDO. Guíese por las palabras.</translation>
    </message>
    <message>
        <source>Draw on all of the place where it hurts, no more and no less.</source>
        <extracomment>mark-draw</extracomment>
        <translation>Dibuje sobre toda la zona que le duele, ni más ni menos.</translation>
    </message>
    <message>
        <source>Shade all of the place where it hurts, no more and no less.</source>
        <extracomment>mark-draw-form</extracomment>
        <translation>Sombree toda la zona que le duele, ni más ni menos.</translation>
    </message>
    <message>
        <source>Put a ring round the place that is the worst.</source>
        <extracomment>mark-worst-form</extracomment>
        <translation>Rodee con un círculo el lugar que más le duele.</translation>
    </message>
    <message>
        <source>Does the pain move from one place to the next? Draw the way it goes.</source>
        <extracomment>mark-spread</extracomment>
        <translation>¿El dolor pasa de un lugar a otro? Dibuje por dónde va.</translation>
    </message>
    <message>
        <source>Is there a place that we must not touch? Mark it with a cross.</source>
        <extracomment>mark-no-touch</extracomment>
        <translation>¿Hay algún lugar que no debemos tocar? Márquelo con una cruz.</translation>
    </message>
    <message>
        <source>It does not hurt on this side.</source>
        <extracomment>mark-nothing</extracomment>
        <translation>Por este lado del cuerpo no me duele.</translation>
    </message>
    <message>
        <source>Wipe it off.</source>
        <extracomment>mark-wipe</extracomment>
        <translation>Borrar.</translation>
    </message>
    <message>
        <source>Take back the last mark.</source>
        <extracomment>mark-take-back</extracomment>
        <translation>Deshacer la última marca.</translation>
    </message>
    <message>
        <source>Thin.</source>
        <extracomment>mark-thin</extracomment>
        <translation>Fina.</translation>
    </message>
    <message>
        <source>Wide.</source>
        <extracomment>mark-wide</extracomment>
        <translation>Ancha.</translation>
    </message>
    <message>
        <source>Very wide.</source>
        <extracomment>mark-wider</extracomment>
        <translation>Muy ancha.</translation>
    </message>
    <message>
        <source>How wide is the line?</source>
        <extracomment>mark-line</extracomment>
        <translation>¿Qué ancho tiene la línea?</translation>
    </message>
    <message>
        <source>The picture is full. Wipe off a mark that you do not need.</source>
        <extracomment>mark-full</extracomment>
        <translation>El dibujo está lleno. Borre una marca que no necesite.</translation>
    </message>
    <message>
        <source>You have not marked a place yet. Mark one, or say that nothing hurts.</source>
        <extracomment>mark-empty</extracomment>
        <translation>Todavía no ha marcado ningún lugar. Marque uno, o diga que nada le duele.</translation>
    </message>
    <message>
        <source>You marked your LEFT {place}.</source>
        <extracomment>side-left</extracomment>
        <translation>Ha marcado su lado IZQUIERDO: {place}.</translation>
    </message>
    <message>
        <source>You marked your RIGHT {place}.</source>
        <extracomment>side-right</extracomment>
        <translation>Ha marcado su lado DERECHO: {place}.</translation>
    </message>
    <message>
        <source>You marked the middle: your {place}.</source>
        <extracomment>side-middle</extracomment>
        <translation>Ha marcado el centro del cuerpo: {place}.</translation>
    </message>
    <message>
        <source>You marked both sides: your LEFT and your RIGHT {place}.</source>
        <extracomment>side-both</extracomment>
        <translation>Ha marcado los dos lados, su IZQUIERDO y su DERECHO: {place}.</translation>
    </message>
    <message>
        <source>It is on the front of your body.</source>
        <extracomment>side-front</extracomment>
        <translation>Está en la parte delantera de su cuerpo.</translation>
    </message>
    <message>
        <source>It is on the back of your body.</source>
        <extracomment>side-back</extracomment>
        <translation>Está en la parte de atrás de su cuerpo.</translation>
    </message>
    <message>
        <source>It is on the picture of your LEFT side.</source>
        <extracomment>side-view-left</extracomment>
        <translation>Está en el dibujo de su lado IZQUIERDO.</translation>
    </message>
    <message>
        <source>It is on the picture of your RIGHT side.</source>
        <extracomment>side-view-right</extracomment>
        <translation>Está en el dibujo de su lado DERECHO.</translation>
    </message>
    <message>
        <source>This mark is not on the body. Please mark the place again.</source>
        <extracomment>side-beside</extracomment>
        <translation>Esta marca no está sobre el cuerpo. Por favor, marque el lugar otra vez.</translation>
    </message>
    <message>
        <source>Is this the place?</source>
        <extracomment>side-title</extracomment>
        <translation>¿Es este el lugar?</translation>
    </message>
    <message>
        <source>Touch that place now. Is it the place you mean?</source>
        <extracomment>side-ask</extracomment>
        <translation>Toque ese lugar ahora. ¿Es el lugar que quiere indicar?</translation>
    </message>
    <message>
        <source>Yes, that is the place.</source>
        <extracomment>side-yes</extracomment>
        <translation>Sí, ese es el lugar.</translation>
    </message>
    <message>
        <source>No, let me mark it again.</source>
        <extracomment>side-no</extracomment>
        <translation>No, quiero marcarlo otra vez.</translation>
    </message>
    <message>
        <source>It is on the other side.</source>
        <extracomment>side-other</extracomment>
        <translation>Está en el otro lado.</translation>
    </message>
    <message>
        <source>We will check this with you once more.</source>
        <extracomment>side-checked</extracomment>
        <translation>Lo comprobaremos con usted una vez más.</translation>
    </message>
    <message>
        <source>Write the side as a word: LEFT, RIGHT, middle or both.</source>
        <extracomment>side-form-write</extracomment>
        <translation>Escriba el lado con una palabra: IZQUIERDO, DERECHO, centro o ambos.</translation>
    </message>
    <message>
        <source>Your LEFT</source>
        <extracomment>figure-left</extracomment>
        <translation>Su IZQUIERDA</translation>
    </message>
    <message>
        <source>Your RIGHT</source>
        <extracomment>figure-right</extracomment>
        <translation>Su DERECHA</translation>
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
        <translation>¿Cómo es lo que siente?</translation>
    </message>
    <message>
        <source>Choose all that fit. You can choose more than one.</source>
        <extracomment>quality-how</extracomment>
        <translation>Elija todo lo que corresponda. Puede elegir más de una respuesta.</translation>
    </message>
    <message>
        <source>Choose the one that fits best.</source>
        <extracomment>quality-one</extracomment>
        <translation>Elija la respuesta que mejor corresponda.</translation>
    </message>
    <message>
        <source>It aches.</source>
        <extracomment>quality-aches</extracomment>
        <translation>Es un dolor sordo.</translation>
    </message>
    <message>
        <source>It burns.</source>
        <extracomment>quality-burns</extracomment>
        <translation>Quema.</translation>
    </message>
    <message>
        <source>It shoots.</source>
        <extracomment>quality-shoots</extracomment>
        <translation>Es como un latigazo que corre.</translation>
    </message>
    <message>
        <source>It tingles.</source>
        <extracomment>quality-tingles</extracomment>
        <translation>Hormiguea.</translation>
    </message>
    <message>
        <source>It is numb.</source>
        <extracomment>quality-numb</extracomment>
        <translation>Está dormido, con poca sensibilidad.</translation>
    </message>
    <message>
        <source>It is stiff.</source>
        <extracomment>quality-stiff</extracomment>
        <translation>Está rígido.</translation>
    </message>
    <message>
        <source>It throbs.</source>
        <extracomment>quality-throbs</extracomment>
        <translation>Late, como el pulso.</translation>
    </message>
    <message>
        <source>It is sharp.</source>
        <extracomment>quality-sharp</extracomment>
        <translation>Es punzante.</translation>
    </message>
    <message>
        <source>It pulls.</source>
        <extracomment>quality-pulls</extracomment>
        <translation>Tira o jala.</translation>
    </message>
    <message>
        <source>It feels tight.</source>
        <extracomment>quality-tight</extracomment>
        <translation>Se siente tenso o apretado.</translation>
    </message>
    <message>
        <source>It presses.</source>
        <extracomment>quality-presses</extracomment>
        <translation>Oprime.</translation>
    </message>
    <message>
        <source>It is none of these.</source>
        <extracomment>quality-other</extracomment>
        <translation>No es nada de esto.</translation>
    </message>
    <message>
        <source>It feels weak.</source>
        <extracomment>quality-weak</extracomment>
        <translation>Se siente débil.</translation>
    </message>
    <message>
        <source>It catches or gets stuck.</source>
        <extracomment>quality-catches</extracomment>
        <translation>Se engancha o se traba.</translation>
    </message>
    <message>
        <source>It gives way.</source>
        <extracomment>quality-gives-way</extracomment>
        <translation>Falla o cede de golpe.</translation>
    </message>
    <message>
        <source>It hurts when clothes touch it.</source>
        <extracomment>quality-touch</extracomment>
        <translation>Duele cuando la ropa lo roza.</translation>
    </message>
    <message>
        <source>It feels swollen.</source>
        <extracomment>quality-swollen</extracomment>
        <translation>Se siente hinchado.</translation>
    </message>
    <message>
        <source>None of these fits. Say it in your own words.</source>
        <extracomment>quality-own</extracomment>
        <translation>Nada de esto corresponde. Dígalo con sus propias palabras.</translation>
    </message>
    <message>
        <source>How strong is the pain?</source>
        <extracomment>strength-title</extracomment>
        <translation>¿Qué tan fuerte es el dolor?</translation>
    </message>
    <message>
        <source>How strong is the pain in this place?</source>
        <extracomment>strength-here</extracomment>
        <translation>¿Qué tan fuerte es el dolor en este lugar?</translation>
    </message>
    <message>
        <source>Choose a number from 0 to 10.</source>
        <extracomment>strength-how</extracomment>
        <translation>Elija un número del 0 al 10.</translation>
    </message>
    <message>
        <source>0 means no pain at all.</source>
        <extracomment>strength-zero</extracomment>
        <translation>0 significa ningún dolor.</translation>
    </message>
    <message>
        <source>10 means the worst pain you can think of.</source>
        <extracomment>strength-ten</extracomment>
        <translation>10 significa el peor dolor que pueda imaginar.</translation>
    </message>
    <message>
        <source>How strong is it now?</source>
        <extracomment>strength-now</extracomment>
        <translation>¿Qué tan fuerte es ahora?</translation>
    </message>
    <message>
        <source>In the last 7 days, how strong was it at its worst?</source>
        <extracomment>strength-worst</extracomment>
        <translation>En los últimos 7 días, ¿qué tan fuerte fue en su peor momento?</translation>
    </message>
    <message>
        <source>In the last 7 days, how strong was it at its best?</source>
        <extracomment>strength-best</extracomment>
        <translation>En los últimos 7 días, ¿qué tan fuerte fue en su mejor momento?</translation>
    </message>
    <message>
        <source>You said that its best is more than its worst. Please look at the two once more.</source>
        <extracomment>strength-check</extracomment>
        <translation>En el mejor momento puso un número más alto que en el peor. Por favor, revise los dos otra vez.</translation>
    </message>
    <message>
        <source>When did it start?</source>
        <extracomment>since-title</extracomment>
        <translation>¿Cuándo empezó?</translation>
    </message>
    <message>
        <source>It started today.</source>
        <extracomment>since-today</extracomment>
        <translation>Empezó hoy.</translation>
    </message>
    <message>
        <source>It started some days ago.</source>
        <extracomment>since-days</extracomment>
        <translation>Empezó hace unos días.</translation>
    </message>
    <message>
        <source>It started some weeks ago.</source>
        <extracomment>since-weeks</extracomment>
        <translation>Empezó hace unas semanas.</translation>
    </message>
    <message>
        <source>It started some months ago.</source>
        <extracomment>since-months</extracomment>
        <translation>Empezó hace unos meses.</translation>
    </message>
    <message>
        <source>It started years ago.</source>
        <extracomment>since-years</extracomment>
        <translation>Empezó hace años.</translation>
    </message>
    <message>
        <source>If you know the day, write it down.</source>
        <extracomment>since-date</extracomment>
        <translation>Si sabe el día, anótelo.</translation>
    </message>
    <message>
        <source>How did it start?</source>
        <extracomment>since-how</extracomment>
        <translation>¿Cómo empezó?</translation>
    </message>
    <message>
        <source>It came all at once.</source>
        <extracomment>since-sudden</extracomment>
        <translation>Vino de repente.</translation>
    </message>
    <message>
        <source>It came bit by bit.</source>
        <extracomment>since-slow</extracomment>
        <translation>Vino poco a poco.</translation>
    </message>
    <message>
        <source>It came after a fall, a blow, a lift or a crash.</source>
        <extracomment>since-injury</extracomment>
        <translation>Vino después de una caída, un golpe, un choque o de levantar peso.</translation>
    </message>
    <message>
        <source>I do not know how it came.</source>
        <extracomment>since-unknown</extracomment>
        <translation>No sé cómo vino.</translation>
    </message>
    <message>
        <source>Is it getting better, worse, or is it the same?</source>
        <extracomment>since-trend</extracomment>
        <translation>¿Está mejorando, empeorando o sigue igual?</translation>
    </message>
    <message>
        <source>What care have you had for it? Did it help?</source>
        <extracomment>since-care</extracomment>
        <translation>¿Qué tratamientos ha tenido para esto? ¿Le ayudaron?</translation>
    </message>
    <message>
        <source>What makes it worse?</source>
        <extracomment>worse-title</extracomment>
        <translation>¿Qué lo empeora?</translation>
    </message>
    <message>
        <source>What makes it better?</source>
        <extracomment>better-title</extracomment>
        <translation>¿Qué lo alivia?</translation>
    </message>
    <message>
        <source>Choose all that fit, or use your own words.</source>
        <extracomment>change-how</extracomment>
        <translation>Elija todo lo que corresponda, o use sus propias palabras.</translation>
    </message>
    <message>
        <source>When I sit.</source>
        <extracomment>change-sitting</extracomment>
        <translation>Al estar sentado o sentada.</translation>
    </message>
    <message>
        <source>When I stand.</source>
        <extracomment>change-standing</extracomment>
        <translation>Al estar de pie.</translation>
    </message>
    <message>
        <source>When I walk.</source>
        <extracomment>change-walking</extracomment>
        <translation>Al caminar.</translation>
    </message>
    <message>
        <source>When I lie down.</source>
        <extracomment>change-lying</extracomment>
        <translation>Al acostarme.</translation>
    </message>
    <message>
        <source>When I bend.</source>
        <extracomment>change-bending</extracomment>
        <translation>Al inclinarme o agacharme.</translation>
    </message>
    <message>
        <source>When I lift or carry.</source>
        <extracomment>change-lifting</extracomment>
        <translation>Al levantar o cargar peso.</translation>
    </message>
    <message>
        <source>When I turn.</source>
        <extracomment>change-turning</extracomment>
        <translation>Al girarme.</translation>
    </message>
    <message>
        <source>When I reach up.</source>
        <extracomment>change-reaching</extracomment>
        <translation>Al levantar los brazos para alcanzar algo.</translation>
    </message>
    <message>
        <source>When I use the stairs.</source>
        <extracomment>change-stairs</extracomment>
        <translation>Al usar las escaleras.</translation>
    </message>
    <message>
        <source>When I get up from a chair or bed.</source>
        <extracomment>change-rising</extracomment>
        <translation>Al levantarme de una silla o de la cama.</translation>
    </message>
    <message>
        <source>When I rest.</source>
        <extracomment>change-resting</extracomment>
        <translation>Al descansar.</translation>
    </message>
    <message>
        <source>When I move.</source>
        <extracomment>change-moving</extracomment>
        <translation>Al moverme.</translation>
    </message>
    <message>
        <source>When I cough or sneeze.</source>
        <extracomment>change-cough</extracomment>
        <translation>Al toser o estornudar.</translation>
    </message>
    <message>
        <source>When it is warm.</source>
        <extracomment>change-heat</extracomment>
        <translation>Con el calor.</translation>
    </message>
    <message>
        <source>When it is cold.</source>
        <extracomment>change-cold</extracomment>
        <translation>Con el frío.</translation>
    </message>
    <message>
        <source>When I am under stress.</source>
        <extracomment>change-stress</extracomment>
        <translation>Cuando tengo estrés.</translation>
    </message>
    <message>
        <source>When I take a pill for it.</source>
        <extracomment>change-medicine</extracomment>
        <translation>Al tomar una pastilla para esto.</translation>
    </message>
    <message>
        <source>There is nothing that I know of.</source>
        <extracomment>change-nothing</extracomment>
        <translation>Nada, que yo sepa.</translation>
    </message>
    <message>
        <source>What makes it worse or better?</source>
        <extracomment>change-title</extracomment>
        <translation>¿Qué lo empeora o lo alivia?</translation>
    </message>
    <message>
        <source>It gets worse.</source>
        <extracomment>change-worse</extracomment>
        <translation>Empeora.</translation>
    </message>
    <message>
        <source>It gets better.</source>
        <extracomment>change-better</extracomment>
        <translation>Mejora.</translation>
    </message>
    <message>
        <source>Say what else it is.</source>
        <extracomment>change-own</extracomment>
        <translation>Diga qué más lo empeora o lo alivia.</translation>
    </message>
    <message>
        <source>How much must you do before it gets worse?</source>
        <extracomment>settle-how-much</extracomment>
        <translation>¿Cuánto tiene que hacer para que empeore?</translation>
    </message>
    <message>
        <source>It takes very little.</source>
        <extracomment>settle-little</extracomment>
        <translation>Muy poco.</translation>
    </message>
    <message>
        <source>It takes some time or work.</source>
        <extracomment>settle-some</extracomment>
        <translation>Cierto tiempo o esfuerzo.</translation>
    </message>
    <message>
        <source>It takes a lot.</source>
        <extracomment>settle-lots</extracomment>
        <translation>Mucho.</translation>
    </message>
    <message>
        <source>Once it is worse, how long does it take to calm down?</source>
        <extracomment>settle-title</extracomment>
        <translation>Cuando ha empeorado, ¿cuánto tarda en calmarse?</translation>
    </message>
    <message>
        <source>It takes some minutes.</source>
        <extracomment>settle-minutes</extracomment>
        <translation>Tarda unos minutos.</translation>
    </message>
    <message>
        <source>It takes some hours.</source>
        <extracomment>settle-hours</extracomment>
        <translation>Tarda unas horas.</translation>
    </message>
    <message>
        <source>It takes a day or more.</source>
        <extracomment>settle-days</extracomment>
        <translation>Tarda un día o más.</translation>
    </message>
    <message>
        <source>How does it change from morning to night?</source>
        <extracomment>day-title</extracomment>
        <translation>¿Cómo cambia de la mañana a la noche?</translation>
    </message>
    <message>
        <source>How is it when you wake up?</source>
        <extracomment>day-waking</extracomment>
        <translation>¿Cómo está al despertar?</translation>
    </message>
    <message>
        <source>How is it in the morning?</source>
        <extracomment>day-morning</extracomment>
        <translation>¿Cómo está por la mañana?</translation>
    </message>
    <message>
        <source>How is it in the middle of the day?</source>
        <extracomment>day-noon</extracomment>
        <translation>¿Cómo está al mediodía?</translation>
    </message>
    <message>
        <source>How is it late in the day?</source>
        <extracomment>day-evening</extracomment>
        <translation>¿Cómo está al final del día?</translation>
    </message>
    <message>
        <source>How is it at night?</source>
        <extracomment>day-night</extracomment>
        <translation>¿Cómo está por la noche?</translation>
    </message>
    <message>
        <source>There is no pain.</source>
        <extracomment>day-none</extracomment>
        <translation>No hay dolor.</translation>
    </message>
    <message>
        <source>It is less.</source>
        <extracomment>day-less</extracomment>
        <translation>Es menor.</translation>
    </message>
    <message>
        <source>It is about the same.</source>
        <extracomment>day-same</extracomment>
        <translation>Es más o menos igual.</translation>
    </message>
    <message>
        <source>It is more.</source>
        <extracomment>day-more</extracomment>
        <translation>Es mayor.</translation>
    </message>
    <message>
        <source>Are you stiff when you wake up? How many minutes does it last?</source>
        <extracomment>day-stiff</extracomment>
        <translation>¿Tiene rigidez al despertar? ¿Cuántos minutos dura?</translation>
    </message>
    <message>
        <source>Does it wake you at night? How many times?</source>
        <extracomment>day-wakes</extracomment>
        <translation>¿Le despierta por la noche? ¿Cuántas veces?</translation>
    </message>
    <message>
        <source>What is hard for you to do?</source>
        <extracomment>hard-title</extracomment>
        <translation>¿Qué le cuesta hacer?</translation>
    </message>
    <message>
        <source>Name three things that you need or want to do, and that are hard now.</source>
        <extracomment>hard-how</extracomment>
        <translation>Nombre tres cosas que necesita o quiere hacer y que ahora le cuestan.</translation>
    </message>
    <message>
        <source>It can be putting on shoes, sleeping, work, or playing with a child.</source>
        <extracomment>hard-like</extracomment>
        <translation>Puede ser ponerse los zapatos, dormir, trabajar o jugar con un niño.</translation>
    </message>
    <message>
        <source>This is the first thing.</source>
        <extracomment>hard-first</extracomment>
        <translation>Esta es la primera cosa.</translation>
    </message>
    <message>
        <source>This is the second thing.</source>
        <extracomment>hard-second</extracomment>
        <translation>Esta es la segunda cosa.</translation>
    </message>
    <message>
        <source>This is the third thing.</source>
        <extracomment>hard-third</extracomment>
        <translation>Esta es la tercera cosa.</translation>
    </message>
    <message>
        <source>Give each a number from 0 to 10. Think of today.</source>
        <extracomment>hard-number</extracomment>
        <translation>Dé a cada una un número del 0 al 10. Piense en hoy.</translation>
    </message>
    <message>
        <source>0 means that you cannot do it at all.</source>
        <extracomment>hard-zero</extracomment>
        <translation>0 significa que no puede hacerlo en absoluto.</translation>
    </message>
    <message>
        <source>10 means that you can do it as you did before.</source>
        <extracomment>hard-ten</extracomment>
        <translation>10 significa que puede hacerlo como antes.</translation>
    </message>
    <message>
        <source>What do you hope for?</source>
        <extracomment>goal-title</extracomment>
        <translation>¿Qué espera lograr?</translation>
    </message>
    <message>
        <source>Say it in your own words.</source>
        <extracomment>goal-own</extracomment>
        <translation>Dígalo con sus propias palabras.</translation>
    </message>
    <message>
        <source>Is there something that you fear about it?</source>
        <extracomment>goal-fear</extracomment>
        <translation>¿Hay algo de esto que le dé miedo?</translation>
    </message>
    <message>
        <source>Is there some kind of care that you do not want?</source>
        <extracomment>goal-not</extracomment>
        <translation>¿Hay algún tipo de tratamiento que no quiera?</translation>
    </message>
    <message>
        <source>What must we know about your health?</source>
        <extracomment>health-title</extracomment>
        <translation>¿Qué debemos saber de su salud?</translation>
    </message>
    <message>
        <source>Some care can harm you if we do not know this. So please tell us all of it.</source>
        <extracomment>health-why</extracomment>
        <translation>Algunos tratamientos pueden hacerle daño si no sabemos esto. Por eso, díganoslo todo, por favor.</translation>
    </message>
    <message>
        <source>Yes.</source>
        <extracomment>health-yes</extracomment>
        <translation>Sí.</translation>
    </message>
    <message>
        <source>No.</source>
        <extracomment>health-no</extracomment>
        <translation>No.</translation>
    </message>
    <message>
        <source>I am not sure.</source>
        <extracomment>health-unsure</extracomment>
        <translation>No lo sé con seguridad.</translation>
    </message>
    <message>
        <source>Which one? Since when?</source>
        <extracomment>health-which</extracomment>
        <translation>¿Cuál? ¿Desde cuándo?</translation>
    </message>
    <message>
        <source>Which pills, drops, shots or patches do you use?</source>
        <extracomment>medicine-title</extracomment>
        <translation>¿Qué pastillas, gotas, inyecciones o parches usa?</translation>
    </message>
    <message>
        <source>Write down all of them, also those from a shop and those made from plants.</source>
        <extracomment>medicine-all</extracomment>
        <translation>Anótelo todo, también lo que se compra en tiendas y lo hecho con plantas.</translation>
    </message>
    <message>
        <source>Bring the list or the boxes with you.</source>
        <extracomment>medicine-bring</extracomment>
        <translation>Traiga la lista o las cajas.</translation>
    </message>
    <message>
        <source>Do you take a blood thinner?</source>
        <extracomment>medicine-anticoagulant</extracomment>
        <translation>¿Toma un anticoagulante, es decir, un medicamento contra los coágulos de sangre?</translation>
    </message>
    <message>
        <source>Do you take aspirin, or a drug like it, to keep your blood thin?</source>
        <extracomment>medicine-antiplatelet</extracomment>
        <translation>¿Toma aspirina, o un medicamento parecido, para que la sangre no forme coágulos?</translation>
    </message>
    <message>
        <source>Do you take steroid drugs, or did you for a long time?</source>
        <extracomment>medicine-steroids</extracomment>
        <translation>¿Toma corticoides (cortisona), o los tomó durante mucho tiempo?</translation>
    </message>
    <message>
        <source>Do not stop or change a drug because of our questions.</source>
        <extracomment>medicine-keep</extracomment>
        <translation>No deje ni cambie un medicamento por nuestras preguntas.</translation>
    </message>
    <message>
        <source>Have you had an operation?</source>
        <extracomment>surgery-title</extracomment>
        <translation>¿Ha tenido alguna operación?</translation>
    </message>
    <message>
        <source>What was done, where, and in which year?</source>
        <extracomment>surgery-what</extracomment>
        <translation>¿Qué le hicieron, dónde y en qué año?</translation>
    </message>
    <message>
        <source>Is there anything in your body that was put there?</source>
        <extracomment>implant-title</extracomment>
        <translation>¿Tiene algo dentro del cuerpo que le hayan puesto?</translation>
    </message>
    <message>
        <source>Does anything make your skin itch, swell or burn?</source>
        <extracomment>allergy-title</extracomment>
        <translation>¿Hay algo que le cause picazón, hinchazón o ardor en la piel?</translation>
    </message>
    <message>
        <source>Are you pregnant, or might you be?</source>
        <extracomment>pregnancy-title</extracomment>
        <translation>¿Está embarazada, o podría estarlo?</translation>
    </message>
    <message>
        <source>Which week are you in?</source>
        <extracomment>pregnancy-week</extracomment>
        <translation>¿En qué semana está?</translation>
    </message>
    <message>
        <source>Have you given birth in the last six months?</source>
        <extracomment>pregnancy-birth</extracomment>
        <translation>¿Ha dado a luz en los últimos seis meses?</translation>
    </message>
    <message>
        <source>Do you bleed or bruise with ease?</source>
        <extracomment>health-bleeding-disorder</extracomment>
        <translation>¿Sangra o le salen moretones con facilidad?</translation>
    </message>
    <message>
        <source>Are your bones thin? Has a bone cracked from a small fall?</source>
        <extracomment>health-osteoporosis</extracomment>
        <translation>¿Tiene los huesos frágiles (osteoporosis)? ¿Se le ha roto un hueso por una caída leve?</translation>
    </message>
    <message>
        <source>Do you have cancer, or have you had it?</source>
        <extracomment>health-cancer</extracomment>
        <translation>¿Tiene cáncer, o lo ha tenido?</translation>
    </message>
    <message>
        <source>Have you ever had a clot in a leg or lung?</source>
        <extracomment>health-clot</extracomment>
        <translation>¿Ha tenido alguna vez un coágulo en una pierna o un pulmón?</translation>
    </message>
    <message>
        <source>Do you have too much sugar in your blood (diabetes)?</source>
        <extracomment>health-diabetes</extracomment>
        <translation>¿Tiene demasiado azúcar en la sangre (diabetes)?</translation>
    </message>
    <message>
        <source>Is your blood pressure too high?</source>
        <extracomment>health-pressure</extracomment>
        <translation>¿Tiene la presión arterial (tensión) demasiado alta?</translation>
    </message>
    <message>
        <source>Do you have trouble with your heart, or have you had a stroke?</source>
        <extracomment>health-heart</extracomment>
        <translation>¿Tiene problemas del corazón, o ha tenido un derrame o infarto cerebral?</translation>
    </message>
    <message>
        <source>Is there a place where you feel little or nothing?</source>
        <extracomment>health-numb</extracomment>
        <translation>¿Hay algún lugar del cuerpo donde sienta poco o nada?</translation>
    </message>
    <message>
        <source>Does your skin tear with ease?</source>
        <extracomment>health-skin</extracomment>
        <translation>¿Se le rompe la piel con facilidad?</translation>
    </message>
    <message>
        <source>Do you have a cut, burn, rash or sore place on your skin?</source>
        <extracomment>health-wound</extracomment>
        <translation>¿Tiene un corte, una quemadura, un sarpullido o una llaga en la piel?</translation>
    </message>
    <message>
        <source>Do you have thick, bent veins in your legs (varicose veins)?</source>
        <extracomment>health-veins</extracomment>
        <translation>¿Tiene venas gruesas y torcidas en las piernas (varices)?</translation>
    </message>
    <message>
        <source>Have you had lymph nodes taken out or treated with rays?</source>
        <extracomment>health-lymph</extracomment>
        <translation>¿Le han quitado ganglios linfáticos o los han tratado con radioterapia?</translation>
    </message>
    <message>
        <source>Have you had a shot in a joint or muscle in the last weeks?</source>
        <extracomment>health-injection</extracomment>
        <translation>En las últimas semanas, ¿le pusieron una inyección en una articulación o un músculo?</translation>
    </message>
    <message>
        <source>Do you have joints that swell, or joints that slip out?</source>
        <extracomment>health-joints</extracomment>
        <translation>¿Tiene articulaciones que se hinchan o que se salen de su sitio?</translation>
    </message>
    <message>
        <source>Are bones of your spine grown or screwed into one?</source>
        <extracomment>health-fused</extracomment>
        <translation>¿Tiene huesos de la columna unidos en uno solo, de forma natural o con tornillos?</translation>
    </message>
    <message>
        <source>Has care by hand ever made you worse? What came of it?</source>
        <extracomment>health-reaction</extracomment>
        <translation>¿Alguna vez un tratamiento manual le hizo empeorar? ¿Qué pasó después?</translation>
    </message>
    <message>
        <source>Is there something else that we must know?</source>
        <extracomment>health-other</extracomment>
        <translation>¿Hay algo más que debamos saber?</translation>
    </message>
    <message>
        <source>Who is your doctor? May we write to your doctor?</source>
        <extracomment>health-doctor</extracomment>
        <translation>¿Quién es su médico? ¿Podemos escribirle?</translation>
    </message>
    <message>
        <source>Go on.</source>
        <extracomment>move-next</extracomment>
        <translation>Seguir.</translation>
    </message>
    <message>
        <source>Go back.</source>
        <extracomment>move-back</extracomment>
        <translation>Volver.</translation>
    </message>
    <message>
        <source>Skip this.</source>
        <extracomment>move-skip</extracomment>
        <translation>Omitir esto.</translation>
    </message>
    <message>
        <source>I need help.</source>
        <extracomment>move-help</extracomment>
        <translation>Necesito ayuda.</translation>
    </message>
    <message>
        <source>Please tell your therapist now that you need help. Your answers are safe.</source>
        <extracomment>move-help-said</extracomment>
        <translation>Por favor, diga ahora a su terapeuta que necesita ayuda. Sus respuestas están a salvo.</translation>
    </message>
    <message>
        <source>We could not save this. Please tell your therapist now.</source>
        <extracomment>move-not-saved</extracomment>
        <translation>No pudimos guardar esto. Por favor, dígaselo ahora a su terapeuta.</translation>
    </message>
    <message>
        <source>This is page {page} of {pages}.</source>
        <extracomment>move-page</extracomment>
        <translation>Esta es la página {page} de {pages}.</translation>
    </message>
    <message>
        <source>This is very long. We keep all of it. Please say the main point first.</source>
        <extracomment>move-long</extracomment>
        <translation>Esto es muy largo. Lo guardamos todo. Por favor, diga primero lo más importante.</translation>
    </message>
    <message>
        <source>There is no answer here yet. You can go on and come back.</source>
        <extracomment>move-missing</extracomment>
        <translation>Aquí aún no hay respuesta. Puede seguir y volver después.</translation>
    </message>
    <message>
        <source>These two answers do not fit. Please look at them once more.</source>
        <extracomment>move-clash</extracomment>
        <translation>Estas dos respuestas no concuerdan. Por favor, revíselas otra vez.</translation>
    </message>
    <message>
        <source>Please look at your answers once more.</source>
        <extracomment>end-check-title</extracomment>
        <translation>Por favor, revise sus respuestas otra vez.</translation>
    </message>
    <message>
        <source>You can still change them.</source>
        <extracomment>end-change</extracomment>
        <translation>Todavía puede cambiarlas.</translation>
    </message>
    <message>
        <source>Change this.</source>
        <extracomment>end-change-this</extracomment>
        <translation>Cambiar esto.</translation>
    </message>
    <message>
        <source>There is no answer.</source>
        <extracomment>end-no-answer</extracomment>
        <translation>No hay respuesta.</translation>
    </message>
    <message>
        <source>You did not answer {count} of these. Here is the first one.</source>
        <extracomment>end-missing</extracomment>
        <translation>Preguntas sin respuesta: {count}. Esta es la primera.</translation>
    </message>
    <message>
        <source>Thank you. That was the last question.</source>
        <extracomment>end-thanks</extracomment>
        <translation>Gracias. Esa fue la última pregunta.</translation>
    </message>
    <message>
        <source>Please give this back to your therapist now.</source>
        <extracomment>end-hand-back</extracomment>
        <translation>Por favor, devuelva esto ahora a su terapeuta.</translation>
    </message>
    <message>
        <source>This screen stays shut for others. Only your therapist can go on from here.</source>
        <extracomment>end-locked</extracomment>
        <translation>Esta pantalla queda cerrada para otras personas. Solo su terapeuta puede continuar desde aquí.</translation>
    </message>
    <message>
        <source>For the therapist.</source>
        <extracomment>end-therapist</extracomment>
        <translation>Para su terapeuta.</translation>
    </message>
    <message>
        <source>Your therapist will now go through it with you.</source>
        <extracomment>end-talk</extracomment>
        <translation>Su terapeuta lo repasará ahora con usted.</translation>
    </message>
    <message>
        <source>Please bring these pages to your visit. Do not send them by plain mail or e-mail.</source>
        <extracomment>end-form-bring</extracomment>
        <translation>Por favor, traiga estas páginas a su cita. No las envíe por correo normal ni por correo electrónico.</translation>
    </message>
    <message>
        <source>Sign your name here, and write the date.</source>
        <extracomment>end-form-sign</extracomment>
        <translation>Firme aquí con su nombre y escriba la fecha.</translation>
    </message>
    <message>
        <source>If it gets much worse before your visit, call us or your doctor.</source>
        <extracomment>end-form-worse</extracomment>
        <translation>Si empeora mucho antes de su cita, llámenos o llame a su médico.</translation>
    </message>
</context>
<context>
    <name>techniques</name>
    <message>
        <source>long slow strokes</source>
        <extracomment>gliding</extracomment>
        <translation>pases largos y lentos con las manos</translation>
    </message>
    <message>
        <source>rolling a fold of skin</source>
        <extracomment>skin-rolling</extracomment>
        <translation>pliegue de piel que se hace rodar entre los dedos</translation>
    </message>
    <message>
        <source>steady pressure on one spot</source>
        <extracomment>sustained-pressure</extracomment>
        <translation>presión constante en un punto</translation>
    </message>
    <message>
        <source>small rubs across one spot</source>
        <extracomment>cross-fibre</extracomment>
        <translation>fricciones pequeñas de lado a lado sobre un punto</translation>
    </message>
    <message>
        <source>a held spot while you moved</source>
        <extracomment>hold-and-lengthen</extracomment>
        <translation>un punto sujeto mientras usted se movía</translation>
    </message>
    <message>
        <source>light strokes with a tool</source>
        <extracomment>instrument</extracomment>
        <translation>pases suaves con un instrumento</translation>
    </message>
    <message>
        <source>cups that stand still</source>
        <extracomment>cups-still</extracomment>
        <translation>ventosas quietas</translation>
    </message>
    <message>
        <source>cups that move with oil</source>
        <extracomment>cups-gliding</extracomment>
        <translation>ventosas que se mueven con aceite</translation>
    </message>
    <message>
        <source>small gentle moves of the joint</source>
        <extracomment>mobilise-gently</extracomment>
        <translation>movimientos pequeños y suaves de la articulación</translation>
    </message>
    <message>
        <source>firm moves of the joint</source>
        <extracomment>mobilise-firmly</extracomment>
        <translation>movimientos firmes de la articulación</translation>
    </message>
    <message>
        <source>one quick small push</source>
        <extracomment>thrust</extracomment>
        <translation>un solo empuje, rápido y pequeño</translation>
    </message>
    <message>
        <source>a stretch with slow breaths</source>
        <extracomment>stretch-breath</extracomment>
        <translation>estiramiento con respiraciones lentas</translation>
    </message>
    <message>
        <source>a stretch after you pressed</source>
        <extracomment>stretch-contract-relax</extracomment>
        <translation>estiramiento después de que usted hizo fuerza</translation>
    </message>
    <message>
        <source>a held pose that eased the spot</source>
        <extracomment>held-ease</extracomment>
        <translation>postura mantenida que alivió el punto</translation>
    </message>
</context>
<context>
    <name>warning-signs</name>
    <message>
        <source>Do you have pain, weight or tightness in your chest right now?</source>
        <extracomment>chest-pain-now, as it is asked</extracomment>
        <translation>¿Tiene ahora mismo dolor, peso u opresión en el pecho?</translation>
    </message>
    <message>
        <source>chest pain or pressure at rest</source>
        <extracomment>chest-pain-now</extracomment>
        <translation>dolor u opresión en el pecho en reposo</translation>
    </message>
    <message>
        <source>Does walking fast or climbing stairs bring on pain in your chest, arm or jaw?</source>
        <extracomment>effort-chest-arm-jaw-pain, as it is asked</extracomment>
        <translation>¿Le duele el pecho, el brazo o la mandíbula al caminar rápido o subir escaleras?</translation>
    </message>
    <message>
        <source>chest, arm or jaw pain on effort</source>
        <extracomment>effort-chest-arm-jaw-pain</extracomment>
        <translation>dolor de pecho, brazo o mandíbula con el esfuerzo</translation>
    </message>
    <message>
        <source>Are you newly short of breath, in pain when you breathe in, or coughing up blood?</source>
        <extracomment>lung-clot-signs, as it is asked</extracomment>
        <translation>¿Le falta el aire desde hace poco, le duele al tomar aire o tose sangre?</translation>
    </message>
    <message>
        <source>sudden breathlessness, pain on breathing in, coughing blood</source>
        <extracomment>lung-clot-signs</extracomment>
        <translation>falta de aire repentina, dolor al tomar aire, tos con sangre</translation>
    </message>
    <message>
        <source>Did a sudden, tearing pain start in your chest, back or belly?</source>
        <extracomment>tearing-chest-back-pain, as it is asked</extracomment>
        <translation>¿Le empezó de repente un dolor desgarrador en el pecho, la espalda o el vientre?</translation>
    </message>
    <message>
        <source>sudden tearing pain in chest or back</source>
        <extracomment>tearing-chest-back-pain</extracomment>
        <translation>dolor desgarrador repentino en el pecho o la espalda</translation>
    </message>
    <message>
        <source>Have you passed out, or felt your heart race for no reason, in the last 2 weeks?</source>
        <extracomment>fainting-or-racing-heart, as it is asked</extracomment>
        <translation>En las últimas 2 semanas, ¿se desmayó o se le aceleró el corazón sin motivo?</translation>
    </message>
    <message>
        <source>fainting, or a racing or uneven heart</source>
        <extracomment>fainting-or-racing-heart</extracomment>
        <translation>desmayo, o corazón acelerado o irregular</translation>
    </message>
    <message>
        <source>Has an arm or leg turned cold, pale or blue and sore, all of a sudden?</source>
        <extracomment>cold-pale-limb, as it is asked</extracomment>
        <translation>¿Un brazo o pierna se puso de repente frío, pálido o azulado, y con dolor?</translation>
    </message>
    <message>
        <source>cold, pale, numb limb</source>
        <extracomment>cold-pale-limb</extracomment>
        <translation>extremidad fría, pálida y dormida</translation>
    </message>
    <message>
        <source>Does walking a set distance hurt your calf or thigh, until you stand still?</source>
        <extracomment>walking-calf-pain, as it is asked</extracomment>
        <translation>¿Le duele la pantorrilla o el muslo al caminar cierta distancia, hasta que se detiene?</translation>
    </message>
    <message>
        <source>leg pain on walking that rest eases</source>
        <extracomment>walking-calf-pain</extracomment>
        <translation>dolor de pierna al caminar que se alivia con el reposo</translation>
    </message>
    <message>
        <source>Can you see or softly feel a wide pulse that pushes out in the belly?</source>
        <extracomment>pulsating-belly-mass, as it is asked</extracomment>
        <translation>¿Se ve o palpa suavemente un latido ancho que empuja hacia afuera en el vientre?</translation>
    </message>
    <message>
        <source>pulsating swelling in the abdomen</source>
        <extracomment>pulsating-belly-mass</extracomment>
        <translation>bulto que late en el abdomen</translation>
    </message>
    <message>
        <source>Do you feel a strong heartbeat in your belly when you lie down?</source>
        <extracomment>belly-pulse-felt, as it is asked</extracomment>
        <translation>¿Siente un latido fuerte en el vientre cuando se acuesta?</translation>
    </message>
    <message>
        <source>patient feels a pulse in the belly</source>
        <extracomment>belly-pulse-felt</extracomment>
        <translation>latido que la persona siente en el vientre</translation>
    </message>
    <message>
        <source>Has your face drooped, an arm gone weak or your speech slurred, even for a short time?</source>
        <extracomment>stroke-signs, as it is asked</extracomment>
        <translation>¿Ha tenido la cara caída, un brazo débil o habla arrastrada, aunque fuera poco tiempo?</translation>
    </message>
    <message>
        <source>face droop, arm weakness, speech trouble</source>
        <extracomment>stroke-signs</extracomment>
        <translation>cara caída, debilidad de un brazo, dificultad para hablar</translation>
    </message>
    <message>
        <source>Did a very bad headache hit you all at once, at its worst in 5 minutes or less?</source>
        <extracomment>thunderclap-headache, as it is asked</extracomment>
        <translation>¿Tuvo un dolor de cabeza muy fuerte y repentino, al máximo en 5 minutos o menos?</translation>
    </message>
    <message>
        <source>thunderclap headache</source>
        <extracomment>thunderclap-headache</extracomment>
        <translation>dolor de cabeza en trueno (repentino y muy fuerte)</translation>
    </message>
    <message>
        <source>Do you have a fever along with a stiff neck, bad headache, or eyes that hate light?</source>
        <extracomment>fever-stiff-neck, as it is asked</extracomment>
        <translation>¿Tiene fiebre con cuello rígido, dolor de cabeza fuerte o mucha molestia con la luz?</translation>
    </message>
    <message>
        <source>fever with stiff neck, light hurts, rash</source>
        <extracomment>fever-stiff-neck</extracomment>
        <translation>fiebre con cuello rígido, molestia con la luz, sarpullido</translation>
    </message>
    <message>
        <source>With this new headache, does chewing hurt, is your scalp sore, or is your sight worse?</source>
        <extracomment>new-headache-over-50-jaw-sight, as it is asked</extracomment>
        <translation>Con este dolor de cabeza nuevo, ¿duele masticar o el cuero cabelludo, o ve peor?</translation>
    </message>
    <message>
        <source>new headache from 50 on with jaw, scalp or sight trouble</source>
        <extracomment>new-headache-over-50-jaw-sight</extracomment>
        <translation>dolor de cabeza nuevo desde los 50 años, con problemas de mandíbula, cuero cabelludo o vista</translation>
    </message>
    <message>
        <source>Have you lost sight in one or both eyes, or seen a dark veil, even for minutes?</source>
        <extracomment>new-sight-loss, as it is asked</extracomment>
        <translation>¿Perdió visión en uno o ambos ojos, o vio un velo oscuro, aunque fueran minutos?</translation>
    </message>
    <message>
        <source>sudden loss of sight or a shadow over the eye</source>
        <extracomment>new-sight-loss</extracomment>
        <translation>pérdida repentina de la vista o sombra sobre el ojo</translation>
    </message>
    <message>
        <source>Does this headache grow week by week, wake you, or get worse when you cough or bend?</source>
        <extracomment>headache-getting-worse, as it is asked</extracomment>
        <translation>¿Este dolor de cabeza crece cada semana, le despierta, o empeora al toser o agacharse?</translation>
    </message>
    <message>
        <source>headache growing, waking, worse on strain</source>
        <extracomment>headache-getting-worse</extracomment>
        <translation>dolor de cabeza que crece, despierta o empeora con el esfuerzo</translation>
    </message>
    <message>
        <source>Since the blow to your head, have you been sick, very sleepy, mixed up or had a fit?</source>
        <extracomment>head-injury-drowsy, as it is asked</extracomment>
        <translation>Desde el golpe en la cabeza, ¿ha tenido vómitos, mucho sueño, confusión o una convulsión?</translation>
    </message>
    <message>
        <source>drowsy, vomiting or confused after a blow to the head</source>
        <extracomment>head-injury-drowsy</extracomment>
        <translation>somnolencia, vómitos o confusión tras un golpe en la cabeza</translation>
    </message>
    <message>
        <source>Did you hit your head while you take a drug that thins your blood?</source>
        <extracomment>head-injury-blood-thinner, as it is asked</extracomment>
        <translation>¿Se golpeó la cabeza y toma un anticoagulante (medicamento contra los coágulos)?</translation>
    </message>
    <message>
        <source>blow to the head on a blood thinner</source>
        <extracomment>head-injury-blood-thinner</extracomment>
        <translation>golpe en la cabeza con anticoagulante</translation>
    </message>
    <message>
        <source>Is this neck pain or headache new, and not like any you had before?</source>
        <extracomment>neck-pain-unlike-any-before, as it is asked</extracomment>
        <translation>¿Este dolor de cuello o de cabeza es nuevo y distinto a todos los anteriores?</translation>
    </message>
    <message>
        <source>new neck pain or headache unlike any before</source>
        <extracomment>neck-pain-unlike-any-before</extracomment>
        <translation>dolor de cuello o de cabeza nuevo, distinto a todos los anteriores</translation>
    </message>
    <message>
        <source>Did dizzy spells or feeling sick start with this neck or head pain?</source>
        <extracomment>neck-dizzy-or-sick, as it is asked</extracomment>
        <translation>¿Le empezaron mareos o náuseas con este dolor de cuello o de cabeza?</translation>
    </message>
    <message>
        <source>dizziness or nausea with neck pain (D, N)</source>
        <extracomment>neck-dizzy-or-sick</extracomment>
        <translation>mareo o náuseas con dolor de cuello (D, N)</translation>
    </message>
    <message>
        <source>Have you begun to see double?</source>
        <extracomment>neck-double-vision, as it is asked</extracomment>
        <translation>¿Ha empezado a ver doble?</translation>
    </message>
    <message>
        <source>double vision (D: diplopia)</source>
        <extracomment>neck-double-vision</extracomment>
        <translation>visión doble (D: diplopía)</translation>
    </message>
    <message>
        <source>Have your legs given way so that you fell, without passing out?</source>
        <extracomment>neck-drop-attack, as it is asked</extracomment>
        <translation>¿Le fallaron las piernas y se cayó, sin perder el conocimiento?</translation>
    </message>
    <message>
        <source>drop attack (D)</source>
        <extracomment>neck-drop-attack</extracomment>
        <translation>caída brusca sin desmayo (D: drop attack)</translation>
    </message>
    <message>
        <source>Do you have new trouble with speaking clearly or with swallowing?</source>
        <extracomment>neck-speech-or-swallowing, as it is asked</extracomment>
        <translation>¿Tiene dificultad nueva para hablar con claridad o para tragar?</translation>
    </message>
    <message>
        <source>trouble speaking or swallowing (D: dysarthria, dysphagia)</source>
        <extracomment>neck-speech-or-swallowing</extracomment>
        <translation>dificultad para hablar o tragar (D: disartria, disfagia)</translation>
    </message>
    <message>
        <source>Has your face, or one side of you, gone numb?</source>
        <extracomment>neck-face-numbness, as it is asked</extracomment>
        <translation>¿Se le ha dormido la cara o un lado del cuerpo?</translation>
    </message>
    <message>
        <source>numb face or one side of the body (N)</source>
        <extracomment>neck-face-numbness</extracomment>
        <translation>cara o un lado del cuerpo sin sensibilidad (N)</translation>
    </message>
    <message>
        <source>Do the eyes jerk while looking at you, or is the walk newly broad and unsteady?</source>
        <extracomment>neck-nystagmus-or-gait, as it is asked</extracomment>
        <translation>¿Hay sacudidas de los ojos al mirar de frente, o marcha nueva, ancha e inestable?</translation>
    </message>
    <message>
        <source>nystagmus or new unsteady gait (N, ataxia)</source>
        <extracomment>neck-nystagmus-or-gait</extracomment>
        <translation>nistagmo o marcha inestable nueva (N, ataxia)</translation>
    </message>
    <message>
        <source>Does one lid droop while the pupil on that side is smaller?</source>
        <extracomment>neck-drooping-lid, as it is asked</extracomment>
        <translation>¿Hay un párpado caído y la pupila de ese lado es más pequeña?</translation>
    </message>
    <message>
        <source>drooping lid with a small pupil</source>
        <extracomment>neck-drooping-lid</extracomment>
        <translation>párpado caído con pupila pequeña</translation>
    </message>
    <message>
        <source>In the last month, did you have a neck strain or blow, or a bad infection?</source>
        <extracomment>neck-vessel-risk, as it is asked</extracomment>
        <translation>En el último mes, ¿tuvo un tirón o golpe en el cuello, o infección fuerte?</translation>
    </message>
    <message>
        <source>risk of the neck vessels</source>
        <extracomment>neck-vessel-risk</extracomment>
        <translation>riesgo de los vasos del cuello</translation>
    </message>
    <message>
        <source>Is the upper blood pressure number 180 or more, or the lower one 120 or more?</source>
        <extracomment>very-high-blood-pressure, as it is asked</extracomment>
        <translation>¿La presión arterial máxima es 180 o más, o la mínima 120 o más?</translation>
    </message>
    <message>
        <source>very high blood pressure</source>
        <extracomment>very-high-blood-pressure</extracomment>
        <translation>presión arterial muy alta</translation>
    </message>
    <message>
        <source>Have your hands become numb or clumsy, as with buttons, keys or writing?</source>
        <extracomment>cord-clumsy-hands, as it is asked</extracomment>
        <translation>¿Nota ahora las manos dormidas o torpes, como con botones, llaves o al escribir?</translation>
    </message>
    <message>
        <source>clumsy or numb hands</source>
        <extracomment>cord-clumsy-hands</extracomment>
        <translation>manos torpes o dormidas</translation>
    </message>
    <message>
        <source>Have your legs become stiff, heavy or unsteady, so that you trip or hold on?</source>
        <extracomment>cord-unsteady-legs, as it is asked</extracomment>
        <translation>¿Se le han puesto las piernas rígidas, pesadas o inestables, y tropieza o se sujeta?</translation>
    </message>
    <message>
        <source>unsteady, heavy or stiff legs</source>
        <extracomment>cord-unsteady-legs</extracomment>
        <translation>piernas inestables, pesadas o rígidas</translation>
    </message>
    <message>
        <source>Does bending your head send an electric shock down your back, arms or legs?</source>
        <extracomment>cord-electric-shock-on-bending, as it is asked</extracomment>
        <translation>Al doblar la cabeza, ¿le baja una descarga eléctrica por espalda, brazos o piernas?</translation>
    </message>
    <message>
        <source>electric shock down the spine on bending the neck</source>
        <extracomment>cord-electric-shock-on-bending</extracomment>
        <translation>descarga eléctrica por la columna al doblar el cuello</translation>
    </message>
    <message>
        <source>Are knee jerks very brisk, does the big toe go up, or does the finger flick test show?</source>
        <extracomment>cord-reflex-signs, as it is asked</extracomment>
        <translation>¿Reflejos de rodilla muy vivos, dedo gordo del pie que sube, o golpecito digital positivo?</translation>
    </message>
    <message>
        <source>brisk reflexes, upgoing toe, finger flick sign</source>
        <extracomment>cord-reflex-signs</extracomment>
        <translation>reflejos vivos, dedo gordo del pie hacia arriba, signo del golpecito del dedo</translation>
    </message>
    <message>
        <source>Have you had cancer, and now have a tight band of pain, weak legs or poor balance?</source>
        <extracomment>cord-pain-band-with-cancer, as it is asked</extracomment>
        <translation>¿Ha tenido cáncer y ahora dolor como una faja apretada, piernas débiles o mal equilibrio?</translation>
    </message>
    <message>
        <source>band of pain or weak legs with a cancer history</source>
        <extracomment>cord-pain-band-with-cancer</extracomment>
        <translation>dolor como una faja o piernas débiles, con antecedente de cáncer</translation>
    </message>
    <message>
        <source>Must you hold up your head, or does your neck feel as if it may slip?</source>
        <extracomment>neck-head-feels-unsupported, as it is asked</extracomment>
        <translation>¿Tiene que sujetarse la cabeza, o siente que el cuello podría salirse de su sitio?</translation>
    </message>
    <message>
        <source>head feels too heavy for the neck</source>
        <extracomment>neck-head-feels-unsupported</extracomment>
        <translation>cabeza que se siente demasiado pesada para el cuello</translation>
    </message>
    <message>
        <source>Were you told that you have rheumatoid disease, Down syndrome or very loose joints?</source>
        <extracomment>neck-known-instability-risk, as it is asked</extracomment>
        <translation>¿Le dijeron que tiene enfermedad reumatoide, síndrome de Down o articulaciones muy laxas (sueltas)?</translation>
    </message>
    <message>
        <source>rheumatoid disease, Down syndrome or very loose joints</source>
        <extracomment>neck-known-instability-risk</extracomment>
        <translation>enfermedad reumatoide, síndrome de Down o articulaciones muy laxas</translation>
    </message>
    <message>
        <source>After a sore throat or an ear or neck problem, is the child&apos;s neck held to one side?</source>
        <extracomment>child-wry-neck-after-infection, as it is asked</extracomment>
        <translation>Tras dolor de garganta o problema de oído o cuello, ¿está ladeado el cuello del niño?</translation>
    </message>
    <message>
        <source>wry neck after a sore throat in a child</source>
        <extracomment>child-wry-neck-after-infection</extracomment>
        <translation>cuello torcido en un niño tras dolor de garganta</translation>
    </message>
    <message>
        <source>Did you hurt your neck in this injury, with no X-ray or scan of it since?</source>
        <extracomment>neck-injury-age-65, as it is asked</extracomment>
        <translation>¿Se lastimó el cuello en esta lesión, sin radiografía, tomografía ni resonancia desde entonces?</translation>
    </message>
    <message>
        <source>neck injury from 65 on (Canadian C-spine, high risk)</source>
        <extracomment>neck-injury-age-65</extracomment>
        <translation>lesión de cuello desde los 65 años (regla cervical canadiense, alto riesgo)</translation>
    </message>
    <message>
        <source>With no neck scan since: a fall over 1 m or 5 stairs, or a blow to your crown?</source>
        <extracomment>neck-injury-dangerous-force, as it is asked</extracomment>
        <translation>Responda solo si desde entonces no le han hecho tomografía (TAC) ni resonancia del cuello. ¿Cayó desde más de 1 m o 5 escalones, o se golpeó la coronilla?</translation>
    </message>
    <message>
        <source>neck injury with dangerous force (Canadian C-spine, high risk)</source>
        <extracomment>neck-injury-dangerous-force</extracomment>
        <translation>lesión de cuello con fuerza peligrosa (regla cervical canadiense, alto riesgo)</translation>
    </message>
    <message>
        <source>With no neck scan since: a fast crash, a rollover, being thrown out, or a bike crash?</source>
        <extracomment>neck-injury-traffic, as it is asked</extracomment>
        <translation>Responda solo si desde entonces no le han hecho tomografía (TAC) ni resonancia del cuello. ¿Hubo choque a gran velocidad, vuelco, expulsión del vehículo o choque en bicicleta?</translation>
    </message>
    <message>
        <source>fast crash, rollover, ejection, bike or motor vehicle off road (Canadian C-spine, high risk)</source>
        <extracomment>neck-injury-traffic</extracomment>
        <translation>choque rápido, vuelco, expulsión, bicicleta o vehículo de motor fuera de carretera (regla cervical canadiense, alto riesgo)</translation>
    </message>
    <message>
        <source>Since the injury, do your arms or legs tingle, feel numb or feel weak?</source>
        <extracomment>neck-injury-tingling, as it is asked</extracomment>
        <translation>Desde la lesión, ¿nota hormigueo, adormecimiento o debilidad en los brazos o las piernas?</translation>
    </message>
    <message>
        <source>tingling in arms or legs after neck injury (Canadian C-spine, high risk)</source>
        <extracomment>neck-injury-tingling</extracomment>
        <translation>hormigueo en brazos o piernas tras lesión de cuello (regla cervical canadiense, alto riesgo)</translation>
    </message>
    <message>
        <source>Are all five missing: simple rear-end crash, sits up, has walked, late pain, no midline pain?</source>
        <extracomment>neck-injury-no-low-risk-item, as it is asked</extracomment>
        <translation>¿Faltan los cinco: choque trasero simple, se sienta, ha caminado, dolor tardío, línea media sin dolor?</translation>
    </message>
    <message>
        <source>no low-risk item after neck injury (Canadian C-spine)</source>
        <extracomment>neck-injury-no-low-risk-item</extracomment>
        <translation>ningún dato de bajo riesgo tras lesión de cuello (regla cervical canadiense)</translation>
    </message>
    <message>
        <source>If all the above is no: can they not turn the neck 45 degrees both ways?</source>
        <extracomment>neck-injury-cannot-turn, as it is asked</extracomment>
        <translation>Si todo lo anterior es «no»: ¿hay un lado al que el cuello no gira 45 grados?</translation>
    </message>
    <message>
        <source>cannot turn the neck 45 degrees after injury (Canadian C-spine)</source>
        <extracomment>neck-injury-cannot-turn</extracomment>
        <translation>incapacidad de girar el cuello 45 grados tras la lesión (regla cervical canadiense)</translation>
    </message>
    <message>
        <source>Is the person under 16, drunk or drowsy, or does a worse wound hide neck pain?</source>
        <extracomment>neck-injury-rule-not-valid, as it is asked</extracomment>
        <translation>¿Tiene menos de 16 años, ebriedad o somnolencia, o una herida peor tapa el dolor cervical?</translation>
    </message>
    <message>
        <source>Canadian C-spine rule not to be used</source>
        <extracomment>neck-injury-rule-not-valid</extracomment>
        <translation>regla canadiense de columna cervical no aplicable</translation>
    </message>
    <message>
        <source>Could you not take 4 steps right after the injury, and still cannot now?</source>
        <extracomment>leg-injury-cannot-take-four-steps, as it is asked</extracomment>
        <translation>¿Le fue imposible dar 4 pasos justo tras la lesión, y todavía lo es ahora?</translation>
    </message>
    <message>
        <source>cannot take four steps after injury (Ottawa ankle, foot and knee)</source>
        <extracomment>leg-injury-cannot-take-four-steps</extracomment>
        <translation>incapacidad de dar cuatro pasos tras la lesión (Ottawa: tobillo, pie y rodilla)</translation>
    </message>
    <message>
        <source>Is the back edge or tip of the outer ankle bone sore to press, in its last 6 cm?</source>
        <extracomment>ankle-injury-outer-bone, as it is asked</extracomment>
        <translation>¿Duele al presionar el hueso externo del tobillo (últimos 6 cm, borde posterior o punta)?</translation>
    </message>
    <message>
        <source>outer ankle bone tender (Ottawa ankle)</source>
        <extracomment>ankle-injury-outer-bone</extracomment>
        <translation>hueso externo del tobillo doloroso al presionar (Ottawa: tobillo)</translation>
    </message>
    <message>
        <source>Is the back edge or tip of the inner ankle bone sore to press, in its last 6 cm?</source>
        <extracomment>ankle-injury-inner-bone, as it is asked</extracomment>
        <translation>¿Duele al presionar el hueso interno del tobillo (últimos 6 cm, borde posterior o punta)?</translation>
    </message>
    <message>
        <source>inner ankle bone tender (Ottawa ankle)</source>
        <extracomment>ankle-injury-inner-bone</extracomment>
        <translation>hueso interno del tobillo doloroso al presionar (Ottawa: tobillo)</translation>
    </message>
    <message>
        <source>Is the bump on the outer edge of the foot (base of the fifth ray) sore to press?</source>
        <extracomment>foot-injury-fifth-metatarsal, as it is asked</extracomment>
        <translation>¿Duele al presionar el bulto del borde externo del pie (base del quinto metatarsiano)?</translation>
    </message>
    <message>
        <source>base of fifth metatarsal tender (Ottawa foot)</source>
        <extracomment>foot-injury-fifth-metatarsal</extracomment>
        <translation>base del quinto metatarsiano dolorosa al presionar (Ottawa: pie)</translation>
    </message>
    <message>
        <source>Is the top bone of the inner arch (the navicular) sore to press?</source>
        <extracomment>foot-injury-navicular, as it is asked</extracomment>
        <translation>¿Duele al presionar el hueso más alto del arco interno del pie (el navicular)?</translation>
    </message>
    <message>
        <source>navicular tender (Ottawa foot)</source>
        <extracomment>foot-injury-navicular</extracomment>
        <translation>navicular doloroso al presionar (Ottawa: pie)</translation>
    </message>
    <message>
        <source>Did you hurt your knee in this injury, with no X-ray since?</source>
        <extracomment>knee-injury-age-55, as it is asked</extracomment>
        <translation>¿Se lastimó la rodilla en esta lesión, sin radiografía desde entonces?</translation>
    </message>
    <message>
        <source>knee injury from 55 on (Ottawa knee)</source>
        <extracomment>knee-injury-age-55</extracomment>
        <translation>lesión de rodilla desde los 55 años (Ottawa: rodilla)</translation>
    </message>
    <message>
        <source>Is the kneecap sore to press, and no other bone of the knee?</source>
        <extracomment>knee-injury-kneecap-only, as it is asked</extracomment>
        <translation>¿Duele al presionar la rótula, y ningún otro hueso de la rodilla?</translation>
    </message>
    <message>
        <source>kneecap alone tender (Ottawa knee)</source>
        <extracomment>knee-injury-kneecap-only</extracomment>
        <translation>solo la rótula dolorosa al presionar (Ottawa: rodilla)</translation>
    </message>
    <message>
        <source>Is the head of the fibula, on the outer side below the knee, sore to press?</source>
        <extracomment>knee-injury-fibula-head, as it is asked</extracomment>
        <translation>¿Duele al presionar la cabeza del peroné, por fuera y debajo de la rodilla?</translation>
    </message>
    <message>
        <source>head of fibula tender (Ottawa knee)</source>
        <extracomment>knee-injury-fibula-head</extracomment>
        <translation>cabeza del peroné dolorosa al presionar (Ottawa: rodilla)</translation>
    </message>
    <message>
        <source>Since the injury, can the knee not bend to a right angle?</source>
        <extracomment>knee-injury-cannot-bend-90, as it is asked</extracomment>
        <translation>Desde la lesión, ¿es imposible doblar la rodilla hasta un ángulo recto?</translation>
    </message>
    <message>
        <source>knee will not bend to 90 degrees (Ottawa knee)</source>
        <extracomment>knee-injury-cannot-bend-90</extracomment>
        <translation>rodilla que no se dobla hasta 90 grados (Ottawa: rodilla)</translation>
    </message>
    <message>
        <source>Since the injury, can you not get your elbow straight?</source>
        <extracomment>elbow-injury-cannot-straighten, as it is asked</extracomment>
        <translation>Desde la lesión, ¿le es imposible estirar el codo del todo?</translation>
    </message>
    <message>
        <source>elbow will not straighten after injury</source>
        <extracomment>elbow-injury-cannot-straighten</extracomment>
        <translation>codo que no se estira tras la lesión</translation>
    </message>
    <message>
        <source>After a fall on the hand, does the hollow at the base of the thumb hurt to press?</source>
        <extracomment>wrist-injury-snuffbox, as it is asked</extracomment>
        <translation>Tras caer sobre la mano, ¿duele al presionar el hueco de la base del pulgar?</translation>
    </message>
    <message>
        <source>pain at the thumb side of the wrist after a fall</source>
        <extracomment>wrist-injury-snuffbox</extracomment>
        <translation>dolor de muñeca del lado del pulgar tras una caída</translation>
    </message>
    <message>
        <source>Since the injury, is the limb bent, out of shape, or is the skin torn over bone?</source>
        <extracomment>injury-deformed-limb, as it is asked</extracomment>
        <translation>Tras la lesión, ¿está la extremidad torcida, deformada o con piel rota sobre el hueso?</translation>
    </message>
    <message>
        <source>deformity, out of joint, or bone through the skin</source>
        <extracomment>injury-deformed-limb</extracomment>
        <translation>deformidad, articulación fuera de su sitio o hueso a través de la piel</translation>
    </message>
    <message>
        <source>After the fall, does the leg look shorter or turned out, or can they not lift it?</source>
        <extracomment>hip-injury-short-turned-leg, as it is asked</extracomment>
        <translation>Tras la caída, ¿la pierna parece más corta, girada hacia afuera o imposible de levantar?</translation>
    </message>
    <message>
        <source>leg short and turned out after a fall</source>
        <extracomment>hip-injury-short-turned-leg</extracomment>
        <translation>pierna corta y girada hacia afuera tras una caída</translation>
    </message>
    <message>
        <source>Did this back pain start with a bad fall, a crash or a hard blow?</source>
        <extracomment>major-trauma-spine, as it is asked</extracomment>
        <translation>¿Este dolor de espalda empezó con una caída fuerte, un choque o un golpe fuerte?</translation>
    </message>
    <message>
        <source>spine pain after major injury</source>
        <extracomment>major-trauma-spine</extracomment>
        <translation>dolor de columna tras una lesión grave</translation>
    </message>
    <message>
        <source>Did a small fall, a lift or a cough start this pain?</source>
        <extracomment>minor-injury-weak-bone, as it is asked</extracomment>
        <translation>¿Este dolor empezó con una caída leve, al levantar algo o al toser?</translation>
    </message>
    <message>
        <source>spine or rib pain after a slight fall with weak bone</source>
        <extracomment>minor-injury-weak-bone</extracomment>
        <translation>dolor de columna o costilla tras una caída leve con hueso débil</translation>
    </message>
    <message>
        <source>Have you taken steroid pills for 3 months or more?</source>
        <extracomment>long-steroid-use, as it is asked</extracomment>
        <translation>¿Ha tomado pastillas de corticoides (cortisona) durante 3 meses o más?</translation>
    </message>
    <message>
        <source>long steroid use</source>
        <extracomment>long-steroid-use</extracomment>
        <translation>uso prolongado de corticoides</translation>
    </message>
    <message>
        <source>Do you have thin bones, or has a small fall broken a bone?</source>
        <extracomment>known-thin-bone, as it is asked</extracomment>
        <translation>¿Tiene los huesos frágiles (osteoporosis), o una caída leve le ha roto un hueso?</translation>
    </message>
    <message>
        <source>thin bone or break after a slight fall</source>
        <extracomment>known-thin-bone</extracomment>
        <translation>hueso frágil o rotura tras una caída leve</translation>
    </message>
    <message>
        <source>Does running or hopping bring on a deep pain in your groin or thigh?</source>
        <extracomment>stress-fracture-groin, as it is asked</extracomment>
        <translation>¿Correr o saltar le provoca un dolor profundo en la ingle o el muslo?</translation>
    </message>
    <message>
        <source>groin pain with running or marching</source>
        <extracomment>stress-fracture-groin</extracomment>
        <translation>dolor de ingle al correr o marchar</translation>
    </message>
    <message>
        <source>Is a limb swollen hard and tight, with pain far worse than you would expect?</source>
        <extracomment>compartment-signs, as it is asked</extracomment>
        <translation>¿Tiene una extremidad hinchada, dura y tensa, con mucho más dolor de lo esperable?</translation>
    </message>
    <message>
        <source>pain far beyond the injury, tight and numb limb</source>
        <extracomment>compartment-signs</extracomment>
        <translation>dolor mucho mayor que la lesión, extremidad tensa y sin sensibilidad</translation>
    </message>
    <message>
        <source>Does the muscle space feel like wood, and does moving toes or fingers hurt greatly?</source>
        <extracomment>compartment-stretch-pain, as it is asked</extracomment>
        <translation>¿El compartimento muscular está duro como madera y duele mucho mover los dedos?</translation>
    </message>
    <message>
        <source>severe pain on passive stretch in a tense limb</source>
        <extracomment>compartment-stretch-pain</extracomment>
        <translation>dolor intenso al estiramiento pasivo en una extremidad tensa</translation>
    </message>
    <message>
        <source>Did you feel a pop or kick at your calf or heel, and now cannot rise on your toes?</source>
        <extracomment>tendon-rupture-calf, as it is asked</extracomment>
        <translation>¿Sintió chasquido o golpe en pantorrilla o talón y ahora no puede ponerse de puntillas?</translation>
    </message>
    <message>
        <source>pop in the calf or heel, cannot rise on toes</source>
        <extracomment>tendon-rupture-calf</extracomment>
        <translation>chasquido en la pantorrilla o el talón, sin poder ponerse de puntillas</translation>
    </message>
    <message>
        <source>Since a pop or fall, can you not lift your leg with the knee straight?</source>
        <extracomment>tendon-rupture-knee, as it is asked</extracomment>
        <translation>Tras un chasquido o caída, ¿le es imposible levantar la pierna con la rodilla estirada?</translation>
    </message>
    <message>
        <source>cannot lift the straight leg after a pop at the knee</source>
        <extracomment>tendon-rupture-knee</extracomment>
        <translation>incapacidad de levantar la pierna estirada tras un chasquido en la rodilla</translation>
    </message>
    <message>
        <source>Did a pop or jerk in your arm leave it weak, bruised or with a new bulge?</source>
        <extracomment>tendon-rupture-arm, as it is asked</extracomment>
        <translation>Tras un chasquido o tirón, ¿el brazo quedó débil, con moretones o un bulto nuevo?</translation>
    </message>
    <message>
        <source>pop in shoulder or elbow with lost strength</source>
        <extracomment>tendon-rupture-arm</extracomment>
        <translation>chasquido en el hombro o el codo con pérdida de fuerza</translation>
    </message>
    <message>
        <source>Is one leg or calf newly swollen, sore, warm or red?</source>
        <extracomment>leg-clot-suspicion, as it is asked</extracomment>
        <translation>¿Tiene una pierna o pantorrilla con hinchazón, dolor, calor o enrojecimiento nuevos?</translation>
    </message>
    <message>
        <source>one leg newly swollen, sore, warm or red</source>
        <extracomment>leg-clot-suspicion</extracomment>
        <translation>una pierna con hinchazón, dolor, calor o enrojecimiento nuevos</translation>
    </message>
    <message>
        <source>Do you have cancer now, or were you treated for it in the last 6 months?</source>
        <extracomment>leg-clot-cancer, as it is asked</extracomment>
        <translation>¿Tiene cáncer ahora, o recibió tratamiento por cáncer en los últimos 6 meses?</translation>
    </message>
    <message>
        <source>leg clot score: active cancer (1 point)</source>
        <extracomment>leg-clot-cancer</extracomment>
        <translation>puntuación de coágulo de pierna: cáncer activo (1 punto)</translation>
    </message>
    <message>
        <source>Is your leg in a cast, or was it lately, or is it weak from nerve or brain trouble?</source>
        <extracomment>leg-clot-plaster-or-palsy, as it is asked</extracomment>
        <translation>¿Su pierna lleva yeso, lo llevó hace poco, o está débil por daño nervioso o cerebral?</translation>
    </message>
    <message>
        <source>leg clot score: paralysis or plaster (1 point)</source>
        <extracomment>leg-clot-plaster-or-palsy</extracomment>
        <translation>puntuación de coágulo de pierna: parálisis o yeso (1 punto)</translation>
    </message>
    <message>
        <source>Were you just in bed for 3 days or more, or had big surgery in the last 12 weeks?</source>
        <extracomment>leg-clot-bed-or-surgery, as it is asked</extracomment>
        <translation>¿Guardó cama hace poco 3 días o más, o tuvo cirugía mayor en las últimas 12 semanas?</translation>
    </message>
    <message>
        <source>leg clot score: in bed 3 days, or major surgery within 12 weeks (1 point)</source>
        <extracomment>leg-clot-bed-or-surgery</extracomment>
        <translation>puntuación de coágulo de pierna: 3 días en cama o cirugía mayor hasta 12 semanas antes (1 punto)</translation>
    </message>
    <message>
        <source>Is it sore to a light touch along the deep veins of calf or inner thigh?</source>
        <extracomment>leg-clot-deep-vein-tender, as it is asked</extracomment>
        <translation>¿Duele al tocar suavemente a lo largo de las venas profundas (pantorrilla o muslo interno)?</translation>
    </message>
    <message>
        <source>leg clot score: tender along the deep veins (1 point)</source>
        <extracomment>leg-clot-deep-vein-tender</extracomment>
        <translation>puntuación de coágulo de pierna: dolor al tocar a lo largo de las venas profundas (1 punto)</translation>
    </message>
    <message>
        <source>Is one whole leg swollen?</source>
        <extracomment>leg-clot-whole-leg-swollen, as it is asked</extracomment>
        <translation>¿Está hinchada toda una pierna?</translation>
    </message>
    <message>
        <source>leg clot score: entire leg swollen (1 point)</source>
        <extracomment>leg-clot-whole-leg-swollen</extracomment>
        <translation>puntuación de coágulo de pierna: pierna entera hinchada (1 punto)</translation>
    </message>
    <message>
        <source>Is the calf at least 3 cm larger than the other, 10 cm below the bump of the shin?</source>
        <extracomment>leg-clot-calf-3-cm, as it is asked</extracomment>
        <translation>¿Es la pantorrilla al menos 3 cm mayor que la otra, 10 cm bajo la tuberosidad tibial?</translation>
    </message>
    <message>
        <source>leg clot score: calf 3 cm larger (1 point)</source>
        <extracomment>leg-clot-calf-3-cm</extracomment>
        <translation>puntuación de coágulo de pierna: pantorrilla 3 cm más ancha (1 punto)</translation>
    </message>
    <message>
        <source>Does a thumb leave a dent in the sore leg, and not in the other?</source>
        <extracomment>leg-clot-pitting, as it is asked</extracomment>
        <translation>¿El pulgar deja un hoyo en la pierna dolorida, y no en la otra?</translation>
    </message>
    <message>
        <source>leg clot score: pitting in this leg only (1 point)</source>
        <extracomment>leg-clot-pitting</extracomment>
        <translation>puntuación de coágulo de pierna: hoyo al presionar solo en esta pierna (1 punto)</translation>
    </message>
    <message>
        <source>Do you see new full veins under the skin of this leg that are not varicose?</source>
        <extracomment>leg-clot-side-veins, as it is asked</extracomment>
        <translation>¿Ve bajo la piel de esta pierna venas nuevas y llenas que no son varices?</translation>
    </message>
    <message>
        <source>leg clot score: new surface veins, not varicose (1 point)</source>
        <extracomment>leg-clot-side-veins</extracomment>
        <translation>puntuación de coágulo de pierna: venas superficiales nuevas, no varices (1 punto)</translation>
    </message>
    <message>
        <source>Have you ever had a clot in a deep vein of your leg?</source>
        <extracomment>leg-clot-before, as it is asked</extracomment>
        <translation>¿Ha tenido alguna vez un coágulo en una vena profunda de la pierna?</translation>
    </message>
    <message>
        <source>leg clot score: earlier deep vein clot (1 point)</source>
        <extracomment>leg-clot-before</extracomment>
        <translation>puntuación de coágulo de pierna: coágulo anterior en una vena profunda (1 punto)</translation>
    </message>
    <message>
        <source>Is some other cause at least as likely as a clot?</source>
        <extracomment>leg-clot-other-cause, as it is asked</extracomment>
        <translation>¿Hay otra causa al menos tan probable como un coágulo?</translation>
    </message>
    <message>
        <source>leg clot score: other cause at least as likely (minus 2 points)</source>
        <extracomment>leg-clot-other-cause</extracomment>
        <translation>puntuación de coágulo de pierna: otra causa al menos tan probable (menos 2 puntos)</translation>
    </message>
    <message>
        <source>Is one arm newly swollen, heavy or blue?</source>
        <extracomment>arm-swollen-blue, as it is asked</extracomment>
        <translation>¿Tiene un brazo con hinchazón, pesadez o color azul, y eso es nuevo?</translation>
    </message>
    <message>
        <source>one arm newly swollen or blue</source>
        <extracomment>arm-swollen-blue</extracomment>
        <translation>un brazo con hinchazón o color azul nuevos</translation>
    </message>
    <message>
        <source>Do you feel very ill, confused, or so weak that you can hardly stand?</source>
        <extracomment>very-ill-now, as it is asked</extracomment>
        <translation>¿Se siente muy mal, con confusión, o tan débil que apenas puede estar de pie?</translation>
    </message>
    <message>
        <source>very ill, confused, cold sweat or mottled skin</source>
        <extracomment>very-ill-now</extracomment>
        <translation>malestar muy grave, confusión, sudor frío o piel moteada</translation>
    </message>
    <message>
        <source>Do you have a fever, chills or shakes?</source>
        <extracomment>fever-now, as it is asked</extracomment>
        <translation>¿Tiene fiebre, escalofríos o temblores?</translation>
    </message>
    <message>
        <source>fever or chills</source>
        <extracomment>fever-now</extracomment>
        <translation>fiebre o escalofríos</translation>
    </message>
    <message>
        <source>Is one joint hot, red and swollen, and very sore to move?</source>
        <extracomment>hot-joint, as it is asked</extracomment>
        <translation>¿Tiene una articulación caliente, roja e hinchada, que duele mucho al moverla?</translation>
    </message>
    <message>
        <source>single hot, swollen joint</source>
        <extracomment>hot-joint</extracomment>
        <translation>una sola articulación caliente e hinchada</translation>
    </message>
    <message>
        <source>With this hot or very sore joint, do you have a fever or feel ill?</source>
        <extracomment>hot-joint-with-fever, as it is asked</extracomment>
        <translation>Con esta articulación caliente o muy dolorosa, ¿tiene fiebre o malestar general?</translation>
    </message>
    <message>
        <source>hot joint with fever</source>
        <extracomment>hot-joint-with-fever</extracomment>
        <translation>articulación caliente con fiebre</translation>
    </message>
    <message>
        <source>Is red, hot skin fast spreading, or far more sore than it looks?</source>
        <extracomment>spreading-redness, as it is asked</extracomment>
        <translation>¿La piel roja y caliente se extiende rápido, o duele mucho más de lo que aparenta?</translation>
    </message>
    <message>
        <source>fast spreading redness with great pain</source>
        <extracomment>spreading-redness</extracomment>
        <translation>enrojecimiento que se extiende rápido, con mucho dolor</translation>
    </message>
    <message>
        <source>Did this back pain start after a fever, surgery, or the use of needle drugs?</source>
        <extracomment>spine-infection-risk, as it is asked</extracomment>
        <translation>¿Este dolor de espalda empezó tras fiebre, una operación o el uso de drogas inyectadas?</translation>
    </message>
    <message>
        <source>back pain with infection risk</source>
        <extracomment>spine-infection-risk</extracomment>
        <translation>dolor de espalda con riesgo de infección</translation>
    </message>
    <message>
        <source>Do you have a weak immune system, or take drugs that weaken it?</source>
        <extracomment>weak-immune-system, as it is asked</extracomment>
        <translation>¿Tiene las defensas bajas, o toma medicamentos que las bajan?</translation>
    </message>
    <message>
        <source>weak defence against infection</source>
        <extracomment>weak-immune-system</extracomment>
        <translation>defensas bajas contra las infecciones</translation>
    </message>
    <message>
        <source>Do you have a sore strip of blisters or rash on one side?</source>
        <extracomment>shingles-rash, as it is asked</extracomment>
        <translation>¿Tiene una franja dolorosa de ampollas o sarpullido en un solo lado?</translation>
    </message>
    <message>
        <source>band of pain or blisters on one side</source>
        <extracomment>shingles-rash</extracomment>
        <translation>franja de dolor o ampollas en un lado</translation>
    </message>
    <message>
        <source>Have you ever had cancer?</source>
        <extracomment>past-cancer, as it is asked</extracomment>
        <translation>¿Ha tenido cáncer alguna vez?</translation>
    </message>
    <message>
        <source>cancer now or before</source>
        <extracomment>past-cancer</extracomment>
        <translation>cáncer ahora o antes</translation>
    </message>
    <message>
        <source>Have you lost weight without trying, or do you sweat through your sheets at night?</source>
        <extracomment>weight-loss, as it is asked</extracomment>
        <translation>¿Ha perdido peso sin querer, o suda de noche hasta mojar las sábanas?</translation>
    </message>
    <message>
        <source>weight loss or drenching night sweats</source>
        <extracomment>weight-loss</extracomment>
        <translation>pérdida de peso o sudores nocturnos intensos</translation>
    </message>
    <message>
        <source>Does pain wake you at night, with no way to lie that eases it?</source>
        <extracomment>night-rest-pain, as it is asked</extracomment>
        <translation>¿El dolor le despierta por la noche, sin ninguna postura que lo alivie?</translation>
    </message>
    <message>
        <source>night or rest pain that no position eases</source>
        <extracomment>night-rest-pain</extracomment>
        <translation>dolor nocturno o en reposo que ninguna postura alivia</translation>
    </message>
    <message>
        <source>Do you have a new lump, in a breast or elsewhere, or one that grows?</source>
        <extracomment>new-lump, as it is asked</extracomment>
        <translation>¿Tiene un bulto nuevo, en una mama o en otra parte, o uno que crece?</translation>
    </message>
    <message>
        <source>new or growing lump</source>
        <extracomment>new-lump</extracomment>
        <translation>bulto nuevo o que crece</translation>
    </message>
    <message>
        <source>Is an arm or leg getting weaker from day to day, or does your foot drop?</source>
        <extracomment>progressive-weakness, as it is asked</extracomment>
        <translation>¿Un brazo o pierna pierde fuerza día a día, o arrastra la punta del pie?</translation>
    </message>
    <message>
        <source>weakness that gets worse</source>
        <extracomment>progressive-weakness</extracomment>
        <translation>debilidad que empeora</translation>
    </message>
    <message>
        <source>Do you bruise or bleed for no clear reason, or do you have liver disease?</source>
        <extracomment>easy-bleeding, as it is asked</extracomment>
        <translation>¿Le salen moretones o sangra sin causa clara, o tiene una enfermedad del hígado?</translation>
    </message>
    <message>
        <source>easy bruising or bleeding, liver or platelet trouble</source>
        <extracomment>easy-bleeding</extracomment>
        <translation>moretones o sangrado fáciles, problema de hígado o plaquetas</translation>
    </message>
    <message>
        <source>Do you take a blood thinner, and did groin, thigh or back pain come on at once?</source>
        <extracomment>blood-thinner-new-deep-pain, as it is asked</extracomment>
        <translation>¿Toma un anticoagulante y le empezó de repente dolor de ingle, muslo o espalda?</translation>
    </message>
    <message>
        <source>sudden groin, thigh or back pain on a blood thinner</source>
        <extracomment>blood-thinner-new-deep-pain</extracomment>
        <translation>dolor repentino de ingle, muslo o espalda con anticoagulante</translation>
    </message>
    <message>
        <source>Did an earlier treatment leave you with blisters, burns, strong pain or numbness?</source>
        <extracomment>bad-reaction-last-time, as it is asked</extracomment>
        <translation>¿Un tratamiento anterior le dejó ampollas, quemaduras, dolor fuerte o adormecimiento?</translation>
    </message>
    <message>
        <source>bad reaction to earlier hands-on treatment</source>
        <extracomment>bad-reaction-last-time</extracomment>
        <translation>mala reacción a un tratamiento manual anterior</translation>
    </message>
    <message>
        <source>Is it newly hard to start, stop or feel passing water?</source>
        <extracomment>cauda-equina-bladder, as it is asked</extracomment>
        <translation>¿Desde hace poco le cuesta empezar a orinar, parar o notar que orina?</translation>
    </message>
    <message>
        <source>change of bladder with back or leg pain</source>
        <extracomment>cauda-equina-bladder</extracomment>
        <translation>cambio al orinar, con dolor de espalda o pierna</translation>
    </message>
    <message>
        <source>Do you leak stool, or no longer feel when you must go?</source>
        <extracomment>cauda-equina-bowel, as it is asked</extracomment>
        <translation>¿Se le escapan las heces, o ya no nota cuándo tiene que defecar?</translation>
    </message>
    <message>
        <source>change of bowel with back or leg pain</source>
        <extracomment>cauda-equina-bowel</extracomment>
        <translation>cambio al defecar, con dolor de espalda o pierna</translation>
    </message>
    <message>
        <source>Is it numb or odd between your legs, where you sit or wipe?</source>
        <extracomment>cauda-equina-saddle, as it is asked</extracomment>
        <translation>¿Nota dormida o rara la zona entre las piernas, donde se sienta o se limpia?</translation>
    </message>
    <message>
        <source>saddle numbness</source>
        <extracomment>cauda-equina-saddle</extracomment>
        <translation>falta de sensibilidad entre las piernas (en silla de montar)</translation>
    </message>
    <message>
        <source>Have both legs become weak or numb in the last 2 weeks?</source>
        <extracomment>cauda-equina-both-legs-weak, as it is asked</extracomment>
        <translation>En las últimas 2 semanas, ¿se le han debilitado o dormido las dos piernas?</translation>
    </message>
    <message>
        <source>weakness of both legs</source>
        <extracomment>cauda-equina-both-legs-weak</extracomment>
        <translation>debilidad de ambas piernas</translation>
    </message>
    <message>
        <source>Has pain begun to shoot down both legs, new or worse in the last 2 weeks?</source>
        <extracomment>cauda-equina-both-legs-pain, as it is asked</extracomment>
        <translation>¿Le baja dolor por las dos piernas, nuevo o peor en las últimas 2 semanas?</translation>
    </message>
    <message>
        <source>new pain down both legs</source>
        <extracomment>cauda-equina-both-legs-pain</extracomment>
        <translation>dolor nuevo que baja por ambas piernas</translation>
    </message>
    <message>
        <source>Have you newly lost feeling or function in sex?</source>
        <extracomment>cauda-equina-sexual, as it is asked</extracomment>
        <translation>¿Ha perdido hace poco sensibilidad o función sexual?</translation>
    </message>
    <message>
        <source>new change of sexual feeling or function</source>
        <extracomment>cauda-equina-sexual</extracomment>
        <translation>cambio nuevo en la sensibilidad o la función sexual</translation>
    </message>
    <message>
        <source>Do you have very bad belly pain, a hard belly, or are you vomiting blood?</source>
        <extracomment>severe-belly-pain, as it is asked</extracomment>
        <translation>¿Tiene un dolor de vientre muy fuerte, el vientre duro, o vomita sangre?</translation>
    </message>
    <message>
        <source>severe or rigid abdomen</source>
        <extracomment>severe-belly-pain</extracomment>
        <translation>abdomen rígido o con dolor intenso</translation>
    </message>
    <message>
        <source>With this side or back pain, does it burn to pass water, or is there blood in it?</source>
        <extracomment>flank-pain-fever-urine, as it is asked</extracomment>
        <translation>Con este dolor de costado o espalda, ¿le arde o sangra al orinar?</translation>
    </message>
    <message>
        <source>flank pain with fever or blood in urine</source>
        <extracomment>flank-pain-fever-urine</extracomment>
        <translation>dolor de costado con fiebre o sangre en la orina</translation>
    </message>
    <message>
        <source>Does this pain come with meals, stool or your cycle, and not when you move?</source>
        <extracomment>pain-with-meals-or-effortless, as it is asked</extracomment>
        <translation>¿El dolor viene con comidas, al defecar o con el ciclo menstrual, y no al moverse?</translation>
    </message>
    <message>
        <source>pain tied to meals, bowel or cycle and not to movement</source>
        <extracomment>pain-with-meals-or-effortless</extracomment>
        <translation>dolor ligado a comidas, intestino o ciclo menstrual y no al movimiento</translation>
    </message>
    <message>
        <source>Could you be pregnant, and do you bleed or have pain in belly or shoulder tip?</source>
        <extracomment>early-pregnancy-pelvic-pain, as it is asked</extracomment>
        <translation>¿Podría estar embarazada, y sangra o le duele el vientre o la punta del hombro?</translation>
    </message>
    <message>
        <source>pelvic or shoulder tip pain with a missed period</source>
        <extracomment>early-pregnancy-pelvic-pain</extracomment>
        <translation>dolor de pelvis o de la punta del hombro con falta de la regla</translation>
    </message>
    <message>
        <source>If you have testicles: is one newly sore or swollen?</source>
        <extracomment>testicle-pain, as it is asked</extracomment>
        <translation>Si tiene testículos: ¿hay uno con dolor o hinchazón nuevos?</translation>
    </message>
    <message>
        <source>sudden pain or swelling of a testicle</source>
        <extracomment>testicle-pain</extracomment>
        <translation>dolor o hinchazón repentinos de un testículo</translation>
    </message>
    <message>
        <source>Is there a hard, sore lump in your groin that will not slip back?</source>
        <extracomment>groin-lump-hard-sore, as it is asked</extracomment>
        <translation>¿Tiene en la ingle un bulto duro y doloroso que no vuelve a entrar?</translation>
    </message>
    <message>
        <source>hard, sore lump in the groin that will not go back</source>
        <extracomment>groin-lump-hard-sore</extracomment>
        <translation>bulto duro y doloroso en la ingle que no vuelve a entrar</translation>
    </message>
    <message>
        <source>Is there a lump in your groin, or one that beats?</source>
        <extracomment>groin-lump-or-pulse, as it is asked</extracomment>
        <translation>¿Tiene un bulto en la ingle, o uno que late?</translation>
    </message>
    <message>
        <source>lump or pulsation in the groin</source>
        <extracomment>groin-lump-or-pulse</extracomment>
        <translation>bulto o latido en la ingle</translation>
    </message>
    <message>
        <source>Did hip or groin pain start so fast or so strong that you cannot stand on that leg?</source>
        <extracomment>hip-sudden-cannot-bear, as it is asked</extracomment>
        <translation>¿Tuvo dolor de cadera o ingle tan brusco o fuerte que no puede apoyar esa pierna?</translation>
    </message>
    <message>
        <source>sudden hip pain, cannot bear weight</source>
        <extracomment>hip-sudden-cannot-bear</extracomment>
        <translation>dolor de cadera repentino, sin poder apoyar el peso</translation>
    </message>
    <message>
        <source>Have you had groin pain with steroid pills, heavy drinking or deep dives?</source>
        <extracomment>hip-blood-supply-risk, as it is asked</extracomment>
        <translation>¿Ha tenido dolor de ingle con pastillas de corticoides, mucho alcohol o buceo profundo?</translation>
    </message>
    <message>
        <source>groin pain with steroid use, heavy drinking or diving</source>
        <extracomment>hip-blood-supply-risk</extracomment>
        <translation>dolor de ingle con corticoides, mucho alcohol o buceo</translation>
    </message>
    <message>
        <source>With the hip pain, is your groin or thigh swollen or numb?</source>
        <extracomment>hip-swelling-or-numbness, as it is asked</extracomment>
        <translation>Con el dolor de cadera, ¿tiene la ingle o el muslo hinchados o dormidos?</translation>
    </message>
    <message>
        <source>groin swelling or numbness with hip pain</source>
        <extracomment>hip-swelling-or-numbness</extracomment>
        <translation>hinchazón o falta de sensibilidad en la ingle, con dolor de cadera</translation>
    </message>
    <message>
        <source>Is there new pain, heat or a leak at a joint that was replaced?</source>
        <extracomment>replaced-joint-new-pain, as it is asked</extracomment>
        <translation>¿Hay dolor nuevo, calor o salida de líquido en una articulación con prótesis?</translation>
    </message>
    <message>
        <source>new pain in a replaced joint</source>
        <extracomment>replaced-joint-new-pain</extracomment>
        <translation>dolor nuevo en una articulación con prótesis</translation>
    </message>
    <message>
        <source>Do you have a bad headache, spots before your eyes, or pain below your ribs?</source>
        <extracomment>pregnancy-headache-sight, as it is asked</extracomment>
        <translation>¿Tiene un dolor de cabeza fuerte, ve manchas, o le duele debajo de las costillas?</translation>
    </message>
    <message>
        <source>pregnancy: severe headache, sight trouble, pain below the ribs</source>
        <extracomment>pregnancy-headache-sight</extracomment>
        <translation>embarazo: dolor de cabeza intenso, problemas de vista, dolor debajo de las costillas</translation>
    </message>
    <message>
        <source>Have your face, hands or feet swollen up all at once?</source>
        <extracomment>pregnancy-sudden-swelling, as it is asked</extracomment>
        <translation>¿Se le han hinchado de repente la cara, las manos o los pies?</translation>
    </message>
    <message>
        <source>pregnancy: sudden swelling of face or hands</source>
        <extracomment>pregnancy-sudden-swelling</extracomment>
        <translation>embarazo: hinchazón repentina de la cara o las manos</translation>
    </message>
    <message>
        <source>Do you bleed or leak water, or have belly pains that come and go?</source>
        <extracomment>pregnancy-bleeding-or-fluid, as it is asked</extracomment>
        <translation>¿Sangra o pierde líquido, o tiene dolores de vientre que van y vienen?</translation>
    </message>
    <message>
        <source>pregnancy: bleeding, fluid, or regular pains before term</source>
        <extracomment>pregnancy-bleeding-or-fluid</extracomment>
        <translation>embarazo: sangrado, pérdida de líquido o dolores regulares antes de tiempo</translation>
    </message>
    <message>
        <source>Does your baby move less than it did, or not at all?</source>
        <extracomment>pregnancy-child-moves-less, as it is asked</extracomment>
        <translation>¿Su bebé se mueve menos que antes, o no se mueve nada?</translation>
    </message>
    <message>
        <source>pregnancy: child moves less</source>
        <extracomment>pregnancy-child-moves-less</extracomment>
        <translation>embarazo: el bebé se mueve menos</translation>
    </message>
    <message>
        <source>Did you give birth in the last 6 weeks, and now have a bad headache or pain below the ribs?</source>
        <extracomment>after-birth-headache, as it is asked</extracomment>
        <translation>¿Dio a luz en las últimas 6 semanas y tiene ahora uno de estos dolores? Dolor de cabeza fuerte o dolor debajo de las costillas.</translation>
    </message>
    <message>
        <source>bad headache, breathlessness or rib pain within 6 weeks of birth</source>
        <extracomment>after-birth-headache</extracomment>
        <translation>dolor de cabeza fuerte, falta de aire o dolor de costillas hasta 6 semanas tras el parto</translation>
    </message>
    <message>
        <source>Do you have a sore, a black spot or a hot, swollen foot with poor feeling?</source>
        <extracomment>numb-foot-wound, as it is asked</extracomment>
        <translation>¿Tiene una llaga, una mancha negra o un pie caliente e hinchado, con poca sensibilidad?</translation>
    </message>
    <message>
        <source>wound, black spot or hot swollen foot in a numb foot</source>
        <extracomment>numb-foot-wound</extracomment>
        <translation>herida, mancha negra o pie caliente e hinchado, en un pie sin sensibilidad</translation>
    </message>
    <message>
        <source>Since the injury, can you not lift your arm at all?</source>
        <extracomment>shoulder-lost-arm-strength-after-injury, as it is asked</extracomment>
        <translation>Desde la lesión, ¿le es totalmente imposible levantar el brazo?</translation>
    </message>
    <message>
        <source>arm cannot be lifted after injury</source>
        <extracomment>shoulder-lost-arm-strength-after-injury</extracomment>
        <translation>brazo que no se puede levantar tras la lesión</translation>
    </message>
    <message>
        <source>Since the blow to your chest or back, is it hard to breathe?</source>
        <extracomment>chest-injury-breath, as it is asked</extracomment>
        <translation>Desde el golpe en el pecho o la espalda, ¿le cuesta respirar?</translation>
    </message>
    <message>
        <source>short breath after a blow to chest or back</source>
        <extracomment>chest-injury-breath</extracomment>
        <translation>falta de aire tras un golpe en el pecho o la espalda</translation>
    </message>
    <message>
        <source>Since the blow to belly or side, do you have belly pain, or feel faint?</source>
        <extracomment>belly-injury-pain, as it is asked</extracomment>
        <translation>Desde el golpe en vientre o costado, ¿le duele el vientre o siente que se desmaya?</translation>
    </message>
    <message>
        <source>belly or left shoulder pain after a blow</source>
        <extracomment>belly-injury-pain</extracomment>
        <translation>dolor de vientre o del hombro izquierdo tras un golpe</translation>
    </message>
    <message>
        <source>Does the child limp or not want to walk, and have a fever or look ill?</source>
        <extracomment>child-limp-fever, as it is asked</extracomment>
        <translation>¿El niño cojea o no quiere caminar, y tiene fiebre o se ve enfermo?</translation>
    </message>
    <message>
        <source>limp with fever in a child</source>
        <extracomment>child-limp-fever</extracomment>
        <translation>cojera con fiebre en un niño</translation>
    </message>
    <message>
        <source>Does the child limp, or not want to stand or walk?</source>
        <extracomment>child-limp-young, as it is asked</extracomment>
        <translation>¿El niño cojea, o no quiere ponerse de pie o caminar?</translation>
    </message>
    <message>
        <source>limp or refusal to walk in a small child</source>
        <extracomment>child-limp-young</extracomment>
        <translation>cojera o negativa a caminar en un niño pequeño</translation>
    </message>
    <message>
        <source>Does the child or teen limp with a sore hip, thigh or knee?</source>
        <extracomment>child-limp-hip-stiff, as it is asked</extracomment>
        <translation>¿El niño o adolescente cojea, con dolor de cadera, muslo o rodilla?</translation>
    </message>
    <message>
        <source>hip, thigh or knee pain with limp in a child or teenager</source>
        <extracomment>child-limp-hip-stiff</extracomment>
        <translation>dolor de cadera, muslo o rodilla con cojera en un niño o adolescente</translation>
    </message>
    <message>
        <source>Does bone pain wake the child, or is the child pale, tired or full of bruises?</source>
        <extracomment>child-night-bone-pain, as it is asked</extracomment>
        <translation>¿El dolor de huesos despierta al niño, o está pálido, cansado o lleno de moretones?</translation>
    </message>
    <message>
        <source>night bone pain, pallor or bruises in a child</source>
        <extracomment>child-night-bone-pain</extracomment>
        <translation>dolor nocturno de huesos, palidez o moretones en un niño</translation>
    </message>
    <message>
        <source>Has the child had back or neck pain for more than a few days?</source>
        <extracomment>child-back-pain, as it is asked</extracomment>
        <translation>¿El niño tiene dolor de espalda o de cuello desde hace más de unos días?</translation>
    </message>
    <message>
        <source>back pain in a young child</source>
        <extracomment>child-back-pain</extracomment>
        <translation>dolor de espalda en un niño pequeño</translation>
    </message>
    <message>
        <source>Is the child floppy, hard to wake, or with a rash that stays when a glass is pressed on it?</source>
        <extracomment>child-very-ill, as it is asked</extracomment>
        <translation>¿Está el niño flojo, cuesta despertarlo, o tiene manchas que siguen al presionarlas con un vaso?</translation>
    </message>
    <message>
        <source>floppy, hard to wake, or rash that does not fade</source>
        <extracomment>child-very-ill</extracomment>
        <translation>niño flojo, difícil de despertar, o manchas en la piel que no desaparecen</translation>
    </message>
    <message>
        <source>Does the baby have a fever, or feed poorly and cry in a new way?</source>
        <extracomment>baby-fever, as it is asked</extracomment>
        <translation>¿El bebé tiene fiebre, o come mal y llora de una forma nueva?</translation>
    </message>
    <message>
        <source>fever in a baby</source>
        <extracomment>baby-fever</extracomment>
        <translation>fiebre en un bebé</translation>
    </message>
    <message>
        <source>Is there a bruise or mark on a baby that cannot yet crawl?</source>
        <extracomment>child-bruise-before-crawling, as it is asked</extracomment>
        <translation>¿Hay un moretón o una marca en un bebé que aún no gatea?</translation>
    </message>
    <message>
        <source>bruise in a baby that does not yet move alone</source>
        <extracomment>child-bruise-before-crawling</extracomment>
        <translation>moretón en un bebé que aún no se mueve por sí mismo</translation>
    </message>
    <message>
        <source>Does the story not fit the mark or the age, or does it change, or come late?</source>
        <extracomment>child-story-does-not-fit, as it is asked</extracomment>
        <translation>¿El relato no encaja con la marca o la edad, o cambia, o llega tarde?</translation>
    </message>
    <message>
        <source>injury and story do not fit</source>
        <extracomment>child-story-does-not-fit</extracomment>
        <translation>lesión y relato que no encajan</translation>
    </message>
    <message>
        <source>Are there marks in the shape of a hand, belt or bite, burns, or bruises on ears or neck?</source>
        <extracomment>child-marks-pattern, as it is asked</extracomment>
        <translation>¿Hay marcas con forma de mano, cinturón o mordedura, quemaduras, o moretones en orejas o cuello?</translation>
    </message>
    <message>
        <source>patterned marks, bites, burns, bruises on ears, neck or trunk</source>
        <extracomment>child-marks-pattern</extracomment>
        <translation>marcas con forma, mordeduras, quemaduras, moretones en orejas, cuello o tronco</translation>
    </message>
    <message>
        <source>Have you had thoughts of ending your life?</source>
        <extracomment>thoughts-of-ending-life, as it is asked</extracomment>
        <translation>¿Ha tenido pensamientos de quitarse la vida?</translation>
    </message>
    <message>
        <source>thoughts of ending their life (ask alone, plainly)</source>
        <extracomment>thoughts-of-ending-life</extracomment>
        <translation>pensamientos de quitarse la vida (preguntar a solas y con claridad)</translation>
    </message>
    <message>
        <source>Does anyone at home hurt you or make you feel afraid?</source>
        <extracomment>unsafe-at-home, as it is asked</extracomment>
        <translation>¿Alguien en casa le hace daño o le hace sentir miedo?</translation>
    </message>
    <message>
        <source>fear or harm at home (ask alone)</source>
        <extracomment>unsafe-at-home</extracomment>
        <translation>miedo o daño en casa (preguntar a solas)</translation>
    </message>
    <message>
        <source>Are there marks or signs of poor care on a person who depends on others?</source>
        <extracomment>adult-neglect-or-marks, as it is asked</extracomment>
        <translation>¿Hay marcas o señales de mal cuidado en una persona que depende de otras?</translation>
    </message>
    <message>
        <source>marks or neglect in an adult who depends on others</source>
        <extracomment>adult-neglect-or-marks</extracomment>
        <translation>marcas o descuido en una persona adulta que depende de otras</translation>
    </message>
</context>
</TS>
